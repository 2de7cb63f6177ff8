/** Tests of the words of the list of bikes. */
import { expect, it } from 'vitest';
import type { BikeRow } from '../../session/keeping/bikes.svelte.ts';
import { aboutBike } from './about-bike.ts';
import { whereBikesStay } from './where-bikes-stay.ts';

const row: BikeRow = {
  id: 'a',
  name: 'Twin',
  revision: 1,
  writer: 'tab',
  savedAt: new Date(2026, 2, 4, 15, 5).getTime(),
  card: { owner: 'Ana', notes: 'Oil', tags: ['race', 'wet'], archived: true },
  sheets: 2,
  latestSheet: '2026-03-01',
  onPage: true,
  stored: true,
};

it('says whose a bike is, its tags, its sheets and when it was saved', () => {
  expect(aboutBike(row)).toBe(
    'On the page · Archived · Ana · race · wet · 2 setup sheets, latest 2026-03-01 · 4 Mar 2026, 15:05',
  );
});

it('leaves out what is not known', () => {
  const bare = {
    ...row,
    card: { owner: '', notes: '', tags: [], archived: false },
    sheets: 0,
    latestSheet: null,
  };
  expect(aboutBike({ ...bare, onPage: false })).toBe('4 Mar 2026, 15:05');
  expect(aboutBike({ ...bare, stored: false })).toBe('On the page · Not saved yet');
});

it('says where bikes stay and what the browser has answered', () => {
  expect(whereBikesStay('http://shop:4173', null, true, false)).toBe(
    'Bikes stay in this browser on this device, at the address http://shop:4173. Another address is another store. A private window forgets its bikes when it is closed. ' +
      'After the first save the page asks the browser to keep them.',
  );
  expect(whereBikesStay('http://shop', 'kept', true, false)).toContain('has promised to keep them');
  expect(whereBikesStay('http://shop', 'mayGo', true, false)).toContain('may clear them');
  expect(whereBikesStay('http://shop', 'unasked', true, false)).toContain('does not say how long');
  expect(whereBikesStay('http://shop', 'kept', false, false)).toBe(
    'Bikes last only while this page is open: save them to files.',
  );
  expect(whereBikesStay('http://shop', 'kept', true, true)).toMatch(
    / The page opens without a network too\.$/,
  );
});
