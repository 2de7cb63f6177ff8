/** Tests of the reading seatHeight: the worked number and the turn of the frame. */
import { expect, it } from 'vitest';
import { made, stanceWith } from '../../../tests/support/standing.ts';
import { seatHeight } from './seat-height.ts';

it('of a mark 400 above a pivot that stands at 415, frame level, is 815', () => {
  const on = stanceWith({
    machine: { places: { ...made().places, seat: { x: -50, y: 400 } } },
    pose: { pivot: { y: 415 }, pitch: 0, cos: 1, sin: 0 },
  });
  expect(seatHeight.read(on)).toBe(815);
});

it('behind the pivot falls when the nose comes up', () => {
  const pitch = 0.02;
  const on = stanceWith({
    machine: { places: { ...made().places, seat: { x: -200, y: 400 } } },
    pose: { pivot: { y: 415 }, pitch, cos: Math.cos(pitch), sin: Math.sin(pitch) },
  });
  expect(seatHeight.read(on)).toBeLessThan(815 - 3);
});
