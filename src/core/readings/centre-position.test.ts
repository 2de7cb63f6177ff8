/** Tests of the reading centrePosition: the worked number and its absence. */
import { expect, it } from 'vitest';
import { stanceWith, standing } from '../../../tests/support/standing.ts';
import { carrying, placedBike } from '../../../tests/support/placed-bike.ts';
import { centrePosition } from './centre-position.ts';
import { absent } from './absent.ts';

it('of 100 kg at 600 and 100 kg at 800 is 700', () => {
  const { bike, setup } = carrying(
    placedBike({ frontRadius: 300, rearRadius: 320, wheelbase: 1400, rake: 0.42, offset: 30 }),
    [
      { mass: 100, ahead: 600, high: 400 },
      { mass: 100, ahead: 800, high: 800 },
    ],
  );
  expect(centrePosition.read(standing(bike, setup))).toBeCloseTo(700, 9);
});

it('has no number without a mass', () => {
  expect(centrePosition.read(stanceWith({ mass: 0 }))).toBe(absent('noMass'));
});
