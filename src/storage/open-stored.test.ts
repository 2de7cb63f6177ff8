/** Tests of opening stored bikes. */
import { expect, it } from 'vitest';
import plain from '../../fixtures/bikes/plain.json';
import { fail } from '../core/numeric/result.ts';
import { memoryStore } from './memory-store.ts';
import { openStored } from './open-stored.ts';
import { storageFault } from './storage-fault.ts';

const damaged = JSON.stringify({ ...plain, extra: 1 });

it('keeps the text as it was when opening had to repair it, and only then', async () => {
  const store = memoryStore(null);
  const whole = await openStored(store, 'bike', JSON.stringify(plain), 5);
  expect(whole.ok && whole.value.repairs).toEqual([]);
  expect(await store.originals('bike')).toEqual({ ok: true, value: [] });
  const repaired = await openStored(store, 'bike', damaged, 6);
  expect(repaired.ok && [repaired.value.repairs.length, repaired.value.originalLost]).toEqual([1, null]);
  expect(await store.originals('bike')).toEqual({
    ok: true,
    value: [{ id: 'bike', keptAt: 6, text: damaged }],
  });
});

it('says so when the text as it was could not be kept', async () => {
  const store = { ...memoryStore(null), keepOriginal: async () => fail(storageFault('full')) };
  const opened = await openStored(store, 'bike', damaged, 6);
  expect(opened.ok && opened.value.originalLost?.kind).toBe('full');
});

it('gives the reason for a text that cannot be opened', async () => {
  expect(await openStored(memoryStore(null), 'bike', '{', 6)).toMatchObject({
    ok: false,
    reason: { kind: 'cutOff' },
  });
});
