/** Tests of the reading centreHeight: the worked number and its absence. */
import { expect, it } from 'vitest';
import { stanceWith, standing } from '../../../tests/support/standing.ts';
import { carrying, placedBike } from '../../../tests/support/placed-bike.ts';
import { centreHeight } from './centre-height.ts';
import { absent } from './absent.ts';

it('of 100 kg at 400 and 100 kg at 800 is 600', () => {
  const { bike, setup } = carrying(
    placedBike({ frontRadius: 300, rearRadius: 320, wheelbase: 1400, rake: 0.42, offset: 30 }),
    [
      { mass: 100, ahead: 600, high: 400 },
      { mass: 100, ahead: 800, high: 800 },
    ],
  );
  expect(centreHeight.read(standing(bike, setup))).toBeCloseTo(600, 9);
});

it('has no number without a mass', () => {
  expect(centreHeight.read(stanceWith({ mass: 0 }))).toBe(absent('noMass'));
});
