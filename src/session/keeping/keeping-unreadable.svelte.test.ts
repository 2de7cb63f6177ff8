/** Tests of a store that holds records that are no bikes. */
import { flushSync } from 'svelte';
import { afterEach, expect, it } from 'vitest';
import { begun, endAll, forkOf, idle, names } from '../../../tests/support/kept-tab.ts';
import { succeed } from '../../core/numeric/result.ts';
import type { BikeStore } from '../../storage/bike-store.ts';
import { memoryStore } from '../../storage/memory-store.ts';
import { shelfOf } from '../../storage/read-record.ts';

afterEach(endAll);

const ODD: readonly unknown[] = [null, {}, { id: 5, name: 'Number' }, { id: 'x', name: 'Half', text: null }];

/** A store in memory on whose shelf further records lie, which it is given by the test. */
function withRecords(records: unknown[]): BikeStore {
  const inner = memoryStore(null);
  return {
    ...inner,
    list: async () => {
      const listed = await inner.list();
      return listed.ok ? succeed({ ...listed.value, unreadable: shelfOf(records).unreadable }) : listed;
    },
  };
}

it('tells of each record once, and saves and opens the others as before', async () => {
  const records = [...ODD];
  const store = withRecords(records);
  const { keeping, turn, leave } = await begun(store);
  expect(keeping.unreadable?.text).toBe(
    '4 saved entries cannot be opened as a bike. They stay there unchanged, and all bikes are saved as before.',
  );
  expect(keeping.unreadable?.details).toContain('“Half” is not a bike: its text is empty.');
  turn(9);
  await leave();
  await idle();
  expect(await forkOf(store, keeping.bikeId)).toBe(9);
  expect(await names(store)).toHaveLength(1);
  expect(keeping.unreadable?.details).toHaveLength(4);
  keeping.dismissUnreadable();
  turn(10);
  await leave();
  await keeping.refresh();
  expect(keeping.unreadable).toBeNull();
  records.push({ id: 'y', name: 'Later' });
  await keeping.refresh();
  flushSync();
  expect(keeping.unreadable?.text).toMatch(/^One saved entry .* It stays there unchanged/);
  expect(keeping.unreadable?.details).toEqual(['“Later” is not a bike: its text is missing.']);
  expect(await forkOf(store, keeping.bikeId)).toBe(10);
});
