/** Tests of the error function: its table, its slope, and its far end. */
import { expect, it } from 'vitest';
import { errorFunction } from './error-function.ts';

it.each([
  [0, 0],
  [0.5, 0.5204998778130465],
  [1, 0.8427007929497149],
  [2, 0.9953222650189527],
  [3.5, 0.9999992569016276],
  [7, 1],
])('erf(%d) is %d', (x, value) => {
  expect(errorFunction(x)).toBeCloseTo(value, 14);
  expect(errorFunction(-x)).toBeCloseTo(-value, 14);
});

it('has the bell curve as its slope', () => {
  for (const x of [-1.3, 0.2, 0.9, 2.4]) {
    const h = 1e-5;
    const slope = (errorFunction(x + h) - errorFunction(x - h)) / (2 * h);
    expect(slope).toBeCloseTo((2 / Math.sqrt(Math.PI)) * Math.exp(-x * x), 9);
  }
});
