/** Tests of the reading neutralAntiSquat: the worked number and its absences. */
import { expect, it } from 'vitest';
import { stanceWith } from '../../../tests/support/standing.ts';
import { neutralAntiSquat } from './neutral-anti-squat.ts';
import { absent } from './absent.ts';

it('of 20 of 280 kg, an arm that rises 84 over 600, wheelbase 1400 and centre 650 high is 102.1538', () => {
  const on = stanceWith({
    mass: 280,
    centre: { y: 650 },
    rearAxle: { y: 300 },
    pose: { wheelbase: 1400, pivot: { x: 600, y: 384 } },
    machine: { rearUnsprung: 20 },
  });
  expect(neutralAntiSquat.read(on)).toBeCloseTo(102.1538, 4);
});

it('has no number without a mass or with the centre of gravity on the ground', () => {
  expect(neutralAntiSquat.read(stanceWith({ mass: 0 }))).toBe(absent('noMass'));
  expect(neutralAntiSquat.read(stanceWith({ centre: { y: 0 } }))).toBe(absent('centreOnGround'));
});
