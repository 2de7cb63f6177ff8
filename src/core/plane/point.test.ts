/** Tests of points. */
import { expect, it } from 'vitest';
import { distance, rotate } from './point.ts';

it('the distance of two points is the same both ways', () => {
  expect(distance({ x: 1, y: 2 }, { x: 4, y: 6 })).toBe(5);
  expect(distance({ x: 4, y: 6 }, { x: 1, y: 2 })).toBe(5);
});

it('a quarter turn takes forward to up', () => {
  const up = rotate({ x: 1, y: 0 }, Math.PI / 2);
  expect(up.x).toBeCloseTo(0, 15);
  expect(up.y).toBeCloseTo(1, 15);
});
