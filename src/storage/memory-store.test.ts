/** Tests of the store in memory, whose behaviour every store shares. */
import { expect, it } from 'vitest';
import type { BikeStore, BikeWrite, Stored } from './bike-store.ts';
import { memoryStore } from './memory-store.ts';
import { openStore } from './open-store.ts';
import { fail } from '../core/numeric/result.ts';
import { faultOf, storageFault } from './storage-fault.ts';
import { withinTime } from './within-time.ts';

const write = (more: Partial<BikeWrite> = {}): BikeWrite => ({
  id: 'one',
  name: 'One',
  writer: 'a',
  savedAt: 1,
  text: '{}',
  known: null,
  ...more,
});

async function value<T>(stored: Stored<T>): Promise<T> {
  const result = await stored;
  if (!result.ok) throw new Error(result.reason.sentence);
  return result.value;
}

it('lists bikes, latest first and without their text', async () => {
  const store = memoryStore(null);
  await value(store.save(write()));
  await value(store.save(write({ id: 'two', name: 'Two', savedAt: 2 })));
  const { bikes, unreadable } = await value(store.list());
  expect(bikes).toMatchObject([
    { id: 'two', name: 'Two', revision: 1, writer: 'a', savedAt: 2 },
    { id: 'one', name: 'One', revision: 1, writer: 'a', savedAt: 1 },
  ]);
  expect(bikes.flatMap(Object.keys)).not.toContain('text');
  expect(unreadable).toEqual([]);
  expect(await value(store.load('three'))).toBeNull();
});

it('counts revisions on, also for a bike removed behind the writer’s back', async () => {
  const store = memoryStore(null);
  expect((await value(store.save(write()))).revision).toBe(1);
  expect((await value(store.save(write({ known: 1 })))).revision).toBe(2);
  await value(store.remove('one'));
  expect(await value(store.save(write({ known: 2 })))).toEqual({
    revision: 3,
    kept: null,
    foundGone: true,
  });
});

it('does not take a writer’s own earlier save for another tab’s', async () => {
  const store = memoryStore(null);
  await value(store.save(write()));
  expect((await value(store.save(write({ text: '{"a":1}' })))).kept).toBeNull();
});

it('removes a bike with everything kept beside it, and nothing of another', async () => {
  const store = memoryStore(null);
  for (const id of ['one', 'two']) {
    await value(store.save(write({ id })));
    await value(store.save(write({ id, writer: 'b', text: '[]' })));
    await value(store.keepOriginal({ id, keptAt: 1, text: 'x' }));
  }
  await value(store.remove('one'));
  expect([await value(store.revisions('one')), await value(store.originals('one'))]).toEqual([[], []]);
  expect(await value(store.revisions('two'))).toHaveLength(1);
  await value(store.removeRevision('two', 'a'));
  expect(await value(store.revisions('two'))).toEqual([]);
});

it('keeps one original once', async () => {
  const store = memoryStore(null);
  await value(store.keepOriginal({ id: 'one', keptAt: 1, text: 'x' }));
  await value(store.keepOriginal({ id: 'one', keptAt: 2, text: 'x' }));
  await value(store.keepOriginal({ id: 'one', keptAt: 3, text: 'y' }));
  expect((await value(store.originals('one'))).map((each) => each.keptAt)).toEqual([1, 3]);
});

it('gives back the preferences it was given', async () => {
  const store = memoryStore(null);
  expect(await value(store.loadPreferences())).toBeNull();
  await value(store.savePreferences({ theme: 'sun' }));
  expect(await value(store.loadPreferences())).toEqual({ theme: 'sun' });
});

it('a store that cannot be read is replaced by one in memory that says why', async () => {
  const working = memoryStore(null);
  expect(await openStore(working)).toBe(working);
  const blocked: BikeStore = { ...working, list: async () => fail(storageFault('blocked')) };
  const store = await openStore(blocked);
  expect(store.shortLived?.kind).toBe('blocked');
  expect(await value(store.list())).toEqual({ bikes: [], unreadable: [] });
});

it('tells full and blocked storage from other faults by what the browser throws', () => {
  const thrown = (name: string) => Object.assign(new Error('why'), { name });
  expect(faultOf(thrown('QuotaExceededError')).kind).toBe('full');
  expect(faultOf(thrown('SecurityError')).kind).toBe('blocked');
  expect(faultOf(thrown('VersionError')).kind).toBe('newer');
  expect(faultOf(thrown('AbortError'))).toMatchObject({
    kind: 'failed',
    sentence: expect.stringContaining('(why)'),
  });
  expect(faultOf('odd').sentence).toContain('(odd)');
});

it('waits for an answer no longer than the time given', async () => {
  expect(await withinTime(Promise.resolve(1), 1000)).toEqual({ ok: true, value: 1 });
  expect(await withinTime(new Promise(() => {}), 1)).toEqual({ ok: false, reason: 'late' });
  await expect(withinTime(Promise.reject(new Error('no')), 1000)).rejects.toThrow('no');
});
