/** Tests of the reading rearLiftLimit: the worked number and its absences. */
import { expect, it } from 'vitest';
import { stanceWith, standing } from '../../../tests/support/standing.ts';
import { plainBike, withFrame } from '../../../tests/support/plain-bike.ts';
import { rearLiftLimit } from './rear-lift-limit.ts';
import { absent } from './absent.ts';

it('with the centre 350 behind the front and 950 high is 0.36842 g', () => {
  const on = stanceWith({ centre: { x: 1050, y: 950 }, pose: { wheelbase: 1400 } });
  expect(rearLiftLimit.read(on)).toBeCloseTo(0.36842, 5);
});

it('has no number without a mass, or with the centre of gravity on the ground', () => {
  expect(rearLiftLimit.read(stanceWith({ mass: 0 }))).toBe(absent('noMass'));
  expect(rearLiftLimit.read(stanceWith({ centre: { y: 0 } }))).toBe(absent('centreOnGround'));
});

it('is higher with a rider further back', () => {
  const back = rearLiftLimit.read(standing(withFrame(plainBike, { seat: { x: -80, y: 400 } })));
  expect(back).toBeGreaterThan(rearLiftLimit.read(standing()) as number);
});
