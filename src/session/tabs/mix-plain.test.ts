/** Tests of what lies between two pieces of plain data. */
import { expect, it } from 'vitest';
import { mixPlain } from './mix-plain.ts';

it('numbers come part of the way, wherever they stand', () => {
  const from = { length: 10, wheel: { radii: [1, 2] }, name: 'a' };
  const to = { length: 20, wheel: { radii: [3, 6] }, name: 'a' };
  expect(mixPlain(from, to, 0.25)).toEqual({ length: 12.5, wheel: { radii: [1.5, 3] }, name: 'a' });
  expect(mixPlain(from, to, 0)).toEqual(from);
  expect(mixPlain(from, to, 1)).toEqual(to);
});

it('words, and data of another shape, are those of the nearer end', () => {
  expect(mixPlain<unknown>('chain', 'belt', 0.4)).toBe('chain');
  expect(mixPlain<unknown>('chain', 'belt', 0.6)).toBe('belt');
  expect(mixPlain<unknown>([1, 2], [5], 0.6)).toEqual([5]);
  expect(mixPlain<unknown>({ a: 1 }, { b: 9 }, 0.4)).toEqual({ a: 1 });
  expect(mixPlain<unknown>(null, 4, 0.9)).toBe(4);
});
