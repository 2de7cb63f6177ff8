/** Tests of the table that ends every measurement. */
import { expect, it } from 'vitest';
import { benchTable, isMet } from './bench-table.ts';

it('sets figure, goal, ratio and verdict under one another', () => {
  expect(
    benchTable([
      { what: 'pose', figure: 4.678, unit: 'µs', goal: { most: 5 } },
      { what: 'balance', figure: 20, unit: 'µs', peer: { name: 'least squares', figure: 50, goal: 3 } },
      { what: 'drawings', figure: 31, unit: '/s', goal: { least: 30 } },
      { what: 'chain', figure: 1234.5, unit: 'µs', peer: { name: 'engine', figure: 2469 } },
    ]),
  ).toEqual([
    'what       figure  goal        the peer takes         goal is',
    'pose      4.68 µs  ≤ 5 µs                             met',
    'balance     20 µs  peer ≥ 3 ×  2.5 × (least squares)  MISSED',
    'drawings    31 /s  ≥ 30 /s                            met',
    'chain     1235 µs              2 × (engine)           –',
  ]);
});

it('a goal is met exactly at its figure, and never by one that is not a number', () => {
  const row = { what: 'x', unit: 'ms', figure: 5 };
  expect(isMet({ ...row, goal: { most: 5 } })).toBe(true);
  expect(isMet({ ...row, goal: { most: 4.999 } })).toBe(false);
  expect(isMet({ ...row, goal: { least: 5 } })).toBe(true);
  expect(isMet({ ...row, goal: { least: 5.001 } })).toBe(false);
  expect(isMet({ ...row, peer: { name: 'y', figure: 15, goal: 3 } })).toBe(true);
  expect(isMet({ ...row, goal: { most: 5 }, peer: { name: 'y', figure: 14, goal: 3 } })).toBe(false);
  expect(isMet({ ...row, figure: NaN, goal: { most: 5 } })).toBe(false);
});
