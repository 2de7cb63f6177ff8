/** Tests of how often chance makes a sum of squares so large. */
import { expect, it } from 'vitest';
import { chanceOfSquares } from './chi-square.ts';

it.each([
  [3.841458820694124, 1, 0.05],
  [6.634896601021213, 1, 0.01],
  [18.307038053275146, 10, 0.05],
  [23.209251158954356, 10, 0.01],
  [124.34211340400407, 100, 0.05],
])('a sum of %d over %d squares comes with a chance of %d', (sum, count, chance) => {
  expect(chanceOfSquares(sum, count)).toBeCloseTo(chance, 9);
});

it('two squares follow the exponential law', () => {
  for (const sum of [0.1, 1, 7, 40]) expect(chanceOfSquares(sum, 2)).toBeCloseTo(Math.exp(-sum / 2), 12);
});

it('nothing to spare disagrees with nothing', () => {
  expect(chanceOfSquares(0, 0)).toBe(1);
  expect(chanceOfSquares(1e-20, 0)).toBe(1);
});
