/** Tests of straight lines. */
import { describe, expect, it } from 'vitest';
import { crossing } from './line.ts';

const level = { from: { x: 0, y: 2 }, to: { x: 10, y: 2 } };

describe('the crossing of two lines', () => {
  it('is found beyond the ends of what is drawn', () => {
    expect(crossing(level, { from: { x: 30, y: 0 }, to: { x: 30.5, y: 0.5 } })).toEqual({ x: 32, y: 2 });
  });

  it('is not found when they are parallel, whichever way they point', () => {
    expect(crossing(level, { from: { x: 0, y: 0 }, to: { x: 5, y: 0 } })).toBe('parallel');
    expect(crossing(level, { from: { x: 5, y: 0 }, to: { x: 0, y: 0 } })).toBe('parallel');
  });

  it('is not found with a line whose two points are one, or are no numbers', () => {
    expect(crossing(level, { from: { x: 1, y: 1 }, to: { x: 1, y: 1 } })).toBe('parallel');
    expect(crossing(level, { from: { x: NaN, y: 1 }, to: { x: 1, y: 1 } })).toBe('parallel');
  });
});
