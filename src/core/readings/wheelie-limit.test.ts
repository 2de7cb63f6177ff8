/** Tests of the reading wheelieLimit: the worked number and its absences. */
import { expect, it } from 'vitest';
import { stanceWith, standing } from '../../../tests/support/standing.ts';
import { plainBike, withFrame } from '../../../tests/support/plain-bike.ts';
import { wheelieLimit } from './wheelie-limit.ts';
import { absent } from './absent.ts';

it('with the centre 730 ahead and 785 high is 0.92994 g, 9.12 m/s² at 9.81', () => {
  const limit = wheelieLimit.read(stanceWith({ centre: { x: 730, y: 785 } })) as number;
  expect(limit).toBeCloseTo(0.92994, 5);
  expect(limit * 9.81).toBeCloseTo(9.12, 2);
});

it('has no number without a mass, or with the centre of gravity on the ground', () => {
  expect(wheelieLimit.read(stanceWith({ mass: 0 }))).toBe(absent('noMass'));
  expect(wheelieLimit.read(stanceWith({ centre: { y: 0 } }))).toBe(absent('centreOnGround'));
});

it('is lower with a rider further back', () => {
  const back = wheelieLimit.read(standing(withFrame(plainBike, { seat: { x: -80, y: 400 } })));
  expect(back).toBeLessThan(wheelieLimit.read(standing()) as number);
});
