/** Tests of singular values and their vectors. */
import { expect, it } from 'vitest';
import { singularValues } from './singular-values.ts';

const COLUMNS = [
  [3, 1, -2, 0.5],
  [0.2, 4, 1, -1],
  [1, 1, 1, 2],
];

it('left and right vectors with their values multiply back to the matrix', () => {
  const { values, left, right } = singularValues(COLUMNS);
  COLUMNS.forEach((column, j) =>
    column.forEach((entry, i) => {
      const sum = values.reduce((total, value, k) => total + value * left[k][i] * right[k][j], 0);
      expect(sum).toBeCloseTo(entry, 13);
    }),
  );
  expect([...values].sort((a, b) => b - a)).toEqual(values);
});

it('a column that is the sum of two others leaves one value at nothing', () => {
  const sum = COLUMNS[0].map((each, i) => each + COLUMNS[1][i]);
  const { values } = singularValues([COLUMNS[0], COLUMNS[1], sum]);
  expect(values[2] / values[0]).toBeLessThan(1e-15);
});

it('values a thousand million times smaller than the largest come out to twelve digits', () => {
  const { values } = singularValues([
    [1, 0, 0],
    [0, 1e-9, 0],
  ]);
  expect(values[1]).toBeCloseTo(1e-9, 21);
});

it('more columns than rows, one column and none are no special case', () => {
  expect(singularValues([[3], [4]]).values.map((value) => Number(value.toFixed(12)))).toEqual([5, 0]);
  expect(singularValues([[3, 4]]).values).toEqual([5]);
  expect(singularValues([]).values).toEqual([]);
});
