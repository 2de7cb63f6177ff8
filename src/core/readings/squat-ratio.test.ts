/** Tests of the reading squatRatio: the worked number and its absences. */
import { expect, it } from 'vitest';
import { stanceWith, standing } from '../../../tests/support/standing.ts';
import { antiSquat } from './anti-squat.ts';
import { squatRatio } from './squat-ratio.ts';
import { absent } from './absent.ts';

it('with a load-transfer slope of 0.4 and a squat slope of 0.5 is 0.8', () => {
  const on = stanceWith({
    swingarmSlope: 0.7,
    chainSlope: -0.2,
    centre: { y: 560 },
    pose: { wheelbase: 1400 },
  });
  expect(squatRatio.read(on)).toBeCloseTo(0.8, 12);
});

it('is negative with a pro-squat line and has no number with a level one', () => {
  expect(squatRatio.read(stanceWith({ swingarmSlope: 0.2, chainSlope: -0.3 }))).toBeLessThan(0);
  expect(squatRatio.read(stanceWith({ swingarmSlope: 0.3, chainSlope: -0.3 }))).toBe(absent('neverSquats'));
});

it('has no number without a mass, or with the centre of gravity on the ground', () => {
  expect(squatRatio.read(stanceWith({ mass: 0 }))).toBe(absent('noMass'));
  expect(squatRatio.read(stanceWith({ centre: { y: 0 } }))).toBe(absent('centreOnGround'));
});

it('of a standing bike is the inverse of its anti-squat', () => {
  expect((squatRatio.read(standing()) as number) * (antiSquat.read(standing()) as number)).toBeCloseTo(
    100,
    9,
  );
});
