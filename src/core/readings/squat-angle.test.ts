/** Tests of the reading squatAngle: the worked number and its sign. */
import { expect, it } from 'vitest';
import { stanceWith, standing } from '../../../tests/support/standing.ts';
import { degrees } from '../units/convert.ts';
import { squatAngle } from './squat-angle.ts';

it('of a slope of 0.5 is 26.565°', () => {
  const on = stanceWith({ swingarmSlope: 0.7, chainSlope: -0.2 });
  expect(degrees(squatAngle.read(on) as number)).toBeCloseTo(26.565, 3);
});

it('is negative when the line falls toward the front', () => {
  expect(squatAngle.read(stanceWith({ swingarmSlope: 0.2, chainSlope: -0.3 }))).toBeLessThan(0);
});

it('needs no mass', () => {
  expect(squatAngle.read(stanceWith({ mass: 0 }))).toBe(squatAngle.read(standing()));
});
