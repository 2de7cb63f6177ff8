/** Tests of the reading loadTransferAngle: the worked number and its absences. */
import { expect, it } from 'vitest';
import { stanceWith, standing } from '../../../tests/support/standing.ts';
import { plainBike, plainSetup } from '../../../tests/support/plain-bike.ts';
import { degrees } from '../units/convert.ts';
import { loadTransferAngle } from './load-transfer-angle.ts';
import { absent } from './absent.ts';

it('of 700 over 1400 is 26.565°', () => {
  const on = stanceWith({ centre: { y: 700 }, pose: { wheelbase: 1400 } });
  expect(degrees(loadTransferAngle.read(on) as number)).toBeCloseTo(26.565, 3);
});

it('has no number without a mass, or with the centre of gravity on the ground', () => {
  expect(loadTransferAngle.read(stanceWith({ mass: 0 }))).toBe(absent('noMass'));
  expect(loadTransferAngle.read(stanceWith({ centre: { y: 0 } }))).toBe(absent('centreOnGround'));
});

it('grows with a higher rider', () => {
  const high = loadTransferAngle.read(standing(plainBike, { ...plainSetup, riderHeight: 300 }));
  expect(high).toBeGreaterThan(loadTransferAngle.read(standing()) as number);
});
