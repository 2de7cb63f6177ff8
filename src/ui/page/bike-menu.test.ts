/** Tests of the list of bikes. */
import { expect, it } from 'vitest';
import { DEMO_BIKES } from '../../document/demo-bikes.ts';
import type { BikeSummary } from '../../storage/bike-store.ts';
import { bikeEntries } from './bike-menu.ts';

const bike = (id: string, name: string, minute: number): BikeSummary => ({
  id,
  name,
  revision: 1,
  writer: `writer-${id}`,
  savedAt: new Date(2026, 2, 4, 15, minute).getTime(),
});

it('begins with the bike on the page under its present name, and ends with the demonstrations', () => {
  const entries = bikeEntries(
    'a',
    'New name',
    [bike('a', 'Old name', 1), bike('b', 'Mine', 2)],
    [],
    DEMO_BIKES,
  );
  expect(entries.map(({ label }) => label)).toEqual([
    'New name',
    'Mine',
    ...DEMO_BIKES.map((demo) => `New from demo: ${demo.bike.name}`),
  ]);
  expect(entries[0]).toEqual({ key: 'a', label: 'New name', choice: null });
  expect(entries[1]?.choice).toEqual({ kind: 'stored', id: 'b' });
  expect(entries[2]?.choice).toEqual({ kind: 'demo', document: DEMO_BIKES[0] });
});

it('tells bikes of one name apart by when they were saved', () => {
  const entries = bikeEntries('a', 'Mine', [bike('b', 'Mine', 5), bike('c', 'Hers', 6)], [], []);
  expect(entries.map(({ label }) => label)).toEqual(['Mine', 'Mine, saved 4 Mar, 15:05', 'Hers']);
});

it('offers the versions that other tabs made of the bike on the page', () => {
  const [, other] = bikeEntries('a', 'Mine', [], [bike('a', 'Mine', 7)], []);
  expect(other).toEqual({
    key: 'other-writer-a',
    label: 'Other version, saved 4 Mar, 15:07',
    choice: { kind: 'other', writer: 'writer-a' },
  });
});

it('has a bike on the page before any store has answered', () => {
  expect(bikeEntries(null, 'First', [], [], [])).toEqual([{ key: 'current', label: 'First', choice: null }]);
});
