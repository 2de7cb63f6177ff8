/** Tests of the reading antiSquat: the worked number and its absences. */
import { expect, it } from 'vitest';
import { stanceWith, standing } from '../../../tests/support/standing.ts';
import { antiSquatChain } from './anti-squat-chain.ts';
import { antiSquatSwingarm } from './anti-squat-swingarm.ts';
import { antiSquat } from './anti-squat.ts';
import { absent } from './absent.ts';

it('with a squat slope of 0.5 and a load-transfer slope of 0.4 is 125', () => {
  const on = stanceWith({
    swingarmSlope: 0.7,
    chainSlope: -0.2,
    centre: { y: 560 },
    pose: { wheelbase: 1400 },
  });
  expect(antiSquat.read(on)).toBeCloseTo(125, 12);
});

it('has no number without a mass, or with the centre of gravity on the ground', () => {
  expect(antiSquat.read(stanceWith({ mass: 0 }))).toBe(absent('noMass'));
  expect(antiSquat.read(stanceWith({ centre: { y: 0 } }))).toBe(absent('centreOnGround'));
  expect(antiSquat.read(stanceWith({ centre: { y: -100 } }))).toBe(absent('centreOnGround'));
});

it('of a standing bike is the sum of its two parts', () => {
  const on = standing();
  const parts = (antiSquatSwingarm.read(on) as number) + (antiSquatChain.read(on) as number);
  expect(antiSquat.read(on)).toBeCloseTo(parts, 10);
});
