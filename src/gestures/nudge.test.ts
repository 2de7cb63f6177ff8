/** Tests of moving a point with the arrow keys. */
import { expect, it } from 'vitest';
import { nudge } from './nudge.ts';

const PLAIN = { shift: false, alt: false, ctrl: false };

it('S2: an arrow is 1 mm, with Shift 10 mm, with Alt 0.1 mm, along its own direction', () => {
  expect(nudge({ key: 'ArrowRight', ...PLAIN })).toEqual({ x: 1, y: 0 });
  expect(nudge({ key: 'ArrowLeft', ...PLAIN, shift: true })).toEqual({ x: -10, y: 0 });
  expect(nudge({ key: 'ArrowUp', ...PLAIN, alt: true })).toEqual({ x: 0, y: 0.1 });
  expect(nudge({ key: 'ArrowDown', ...PLAIN })).toEqual({ x: 0, y: -1 });
});

it('Shift and Alt together cancel', () => {
  expect(nudge({ key: 'ArrowUp', ...PLAIN, shift: true, alt: true })).toEqual({ x: 0, y: 1 });
});

it('other keys, and arrows with Ctrl, move nothing', () => {
  expect(nudge({ key: 'a', ...PLAIN })).toBeNull();
  expect(nudge({ key: 'ArrowUp', ...PLAIN, ctrl: true })).toBeNull();
});
