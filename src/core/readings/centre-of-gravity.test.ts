/** Tests of when a bike has a usable centre of gravity. */
import { expect, it } from 'vitest';
import { stanceWith } from '../../../tests/support/standing.ts';
import { withoutCentre } from './centre-of-gravity.ts';
import { absent } from './absent.ts';

it('a bike with mass above the ground has one', () => {
  expect(withoutCentre(stanceWith({}))).toBeNull();
});

it('no mass, and a centre on or a hair above or below the ground, are told apart', () => {
  expect(withoutCentre(stanceWith({ mass: 0, centre: { y: 0 } }))).toBe(absent('noMass'));
  for (const y of [0, 1e-9, -1])
    expect(withoutCentre(stanceWith({ centre: { y } }))).toBe(absent('centreOnGround'));
});
