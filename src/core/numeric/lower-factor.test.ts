/** Tests of the factor of a covariance matrix: it multiplies back, and what is solved with it fits. */
import { expect, it } from 'vitest';
import { backSolved, forwardSolved, lowerFactor } from './lower-factor.ts';

const MATRIX = [
  [4, 2, -1],
  [2, 5, 0.5],
  [-1, 0.5, 3],
];

it('multiplies back to the matrix', () => {
  const factor = lowerFactor(MATRIX);
  if (factor === null) throw new Error('no factor');
  MATRIX.forEach((row, i) =>
    row.forEach((entry, j) => {
      const sum = (factor[i] ?? []).reduce((total, each, k) => total + each * (factor[j][k] ?? 0), 0);
      expect(sum).toBeCloseTo(entry, 14);
    }),
  );
});

it('solves the equations of the matrix, forward and then back', () => {
  const factor = lowerFactor(MATRIX);
  if (factor === null) throw new Error('no factor');
  const found = backSolved(factor, forwardSolved(factor, [1, -2, 7]));
  const product = MATRIX.map((row) => row.reduce((sum, entry, j) => sum + entry * found[j], 0));
  [1, -2, 7].forEach((wanted, i) => expect(product[i]).toBeCloseTo(wanted, 13));
});

it('has none for a matrix that is no covariance', () => {
  expect(
    lowerFactor([
      [1, 2],
      [2, 1],
    ]),
  ).toBeNull();
  expect(lowerFactor([[NaN]])).toBeNull();
});
