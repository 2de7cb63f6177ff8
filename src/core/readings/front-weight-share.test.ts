/** Tests of the reading frontWeightShare: the worked number and its absence. */
import { expect, it } from 'vitest';
import { stanceWith, standing } from '../../../tests/support/standing.ts';
import { carrying, placedBike } from '../../../tests/support/placed-bike.ts';
import { frontWeightShare } from './front-weight-share.ts';
import { absent } from './absent.ts';

it('with the centre 700 ahead on a wheelbase of 1400 is 50', () => {
  const { bike, setup } = carrying(
    placedBike({ frontRadius: 300, rearRadius: 320, wheelbase: 1400, rake: 0.42, offset: 30 }),
    [{ mass: 200, ahead: 700, high: 600 }],
  );
  expect(frontWeightShare.read(standing(bike, setup))).toBeCloseTo(50, 10);
});

it('has no number without a mass', () => {
  expect(frontWeightShare.read(stanceWith({ mass: 0 }))).toBe(absent('noMass'));
});
