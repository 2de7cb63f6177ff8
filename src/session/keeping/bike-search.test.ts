/** Tests of searching and ordering the list of bikes. */
import { expect, it } from 'vitest';
import { EMPTY_CARD } from '../../storage/bike-index.ts';
import type { BikeCard, ListedBike } from '../../storage/bike-store.ts';
import { bikesInOrder, bikesWith, type BikeOrder } from './bike-search.ts';

const bike = (
  name: string,
  savedAt: number,
  card: Partial<BikeCard> = {},
  latestSheet: string | null = null,
): ListedBike => ({
  id: name,
  name,
  revision: 1,
  writer: 'tab',
  savedAt,
  card: { ...EMPTY_CARD, ...card },
  sheets: latestSheet === null ? 0 : 1,
  latestSheet,
});

const BIKES = [
  bike('Twin 10', 3, { owner: 'Ana' }, '2026-03-01'),
  bike('Twin 9', 1, { owner: 'Żaneta', tags: ['race'], notes: 'New fork oil' }),
  bike('Éclair', 2, {}, '2026-10-01'),
  bike('Shed find', 4, { archived: true }),
];

const inOrder = (order: BikeOrder, withArchived = false): string[] =>
  bikesInOrder(BIKES, order, withArchived).map((each) => each.bike.name);
const found = (search: string): string[] =>
  bikesWith(bikesInOrder(BIKES, 'name', true), search).map(({ name }) => name);

it('orders by what was asked for; a bike without it comes last', () => {
  expect(inOrder('lastWorkedOn')).toEqual(['Twin 10', 'Éclair', 'Twin 9']);
  expect(inOrder('name')).toEqual(['Éclair', 'Twin 9', 'Twin 10']);
  expect(inOrder('owner')).toEqual(['Twin 10', 'Twin 9', 'Éclair']);
  expect(inOrder('latestSheet')).toEqual(['Éclair', 'Twin 10', 'Twin 9']);
});

it('shows archived bikes only when they are asked for', () => {
  expect(inOrder('name', true)).toEqual(['Éclair', 'Shed find', 'Twin 9', 'Twin 10']);
});

it('finds every word in name, owner, tags or notes, whatever its case and accents', () => {
  expect(found('twin')).toEqual(['Twin 9', 'Twin 10']);
  expect(found('TWIN zaneta')).toEqual(['Twin 9']);
  expect(found('race oil')).toEqual(['Twin 9']);
  expect(found('eclair')).toEqual(['Éclair']);
  expect(found('twin shed')).toEqual([]);
  expect(found('  ')).toHaveLength(4);
});
