/** Tests of the reading rearLiftDeceleration: the worked number and its absences. */
import { expect, it } from 'vitest';
import { stanceWith, standing } from '../../../tests/support/standing.ts';
import { plainBike, withFrame } from '../../../tests/support/plain-bike.ts';
import { rearLiftDeceleration } from './rear-lift-deceleration.ts';

it('with the centre 350 behind the front and 950 high is 0.36842 g', () => {
  const on = stanceWith({ centreX: 1050, centreY: 950, pose: { wheelbase: 1400 } });
  expect(rearLiftDeceleration.read(on)).toBeCloseTo(0.36842, 5);
});

it('has no number without a mass, or with the centre of gravity on the ground', () => {
  expect(rearLiftDeceleration.read(stanceWith({ mass: 0 }))).toBe('noMass');
  expect(rearLiftDeceleration.read(stanceWith({ centreY: 0 }))).toBe('centreOnGround');
});

it('is higher with a rider further back', () => {
  const back = rearLiftDeceleration.read(standing(withFrame(plainBike, { seat: { x: -80, y: 400 } })));
  expect(back).toBeGreaterThan(rearLiftDeceleration.read(standing()) as number);
});
