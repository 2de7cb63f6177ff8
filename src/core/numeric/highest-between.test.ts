/** Tests of the highest place between two ends. */
import { expect, it } from 'vitest';
import { highestBetween } from './highest-between.ts';

it('finds a top between the places of the grid', () => {
  const found = highestBetween((x) => 3 - (x - 0.637) ** 2, 0, 1, 11);
  expect(found.status).toBe('found');
  expect(found.x).toBeCloseTo(0.637, 6);
  expect(found.value).toBeCloseTo(3, 12);
  expect(found.within).toBeLessThan(1e-8);
});

it('finds the higher of two tops, and a kink', () => {
  expect(highestBetween((x) => Math.sin(x) + x / 50, 0, 4 * Math.PI, 41).x).toBeCloseTo(
    2.5 * Math.PI + 0.02,
    4,
  );
  expect(highestBetween((x) => -Math.abs(x - 0.31), 0, 1, 7).x).toBeCloseTo(0.31, 7);
});

it('takes an end when the function only rises or falls', () => {
  expect(highestBetween((x) => x, 2, 9, 5)).toMatchObject({ status: 'found', x: 9, value: 9 });
  expect(highestBetween((x) => -x, 2, 9, 5)).toMatchObject({ status: 'found', x: 2, value: -2 });
});

it('says when a place has no value', () => {
  expect(highestBetween((x) => (x > 5 ? NaN : x), 0, 9, 10).status).toBe('noValue');
  expect(highestBetween(() => NaN, 0, 9, 10).status).toBe('noValue');
});
