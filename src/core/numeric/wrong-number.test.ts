/** Tests of finding a number that cannot be computed with. */
import { expect, it } from 'vitest';
import { wrongNumber } from './wrong-number.ts';

it('finds nothing wrong with numbers, words, lists and null', () => {
  expect(wrongNumber({ a: 0, b: -1e6, c: 'NaN', d: null, e: [1, { f: 1e6 }] })).toBe(null);
});

it('finds a number that is not one, and one too large for a motorcycle, however deep', () => {
  expect(wrongNumber({ a: { b: [1, { c: NaN }] } })).toBe('inputNotANumber');
  expect(wrongNumber({ a: 1, b: -Infinity })).toBe('inputNotANumber');
  expect(wrongNumber({ a: { b: [1, -1000001] } })).toBe('inputTooLarge');
});
