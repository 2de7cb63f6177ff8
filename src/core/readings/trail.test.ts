/** Tests of the reading trail: the worked number and its sign. */
import { expect, it } from 'vitest';
import { stanceWith, standing } from '../../../tests/support/standing.ts';
import { plainBike, plainSetup } from '../../../tests/support/plain-bike.ts';
import { radians } from '../units/convert.ts';
import { trail } from './trail.ts';

it('for radius 600, rake 5° and offset 22 is 30.40916169', () => {
  const on = stanceWith({ machine: { frontRadius: 600 }, rake: radians(5), offset: 22 });
  expect(trail.read(on)).toBeCloseTo(30.40916169, 8);
});

it('is negative when the patch is ahead of the axis', () => {
  expect(trail.read(stanceWith({ rake: radians(5), offset: 60 }))).toBeLessThan(0);
});

it('shrinks with more clamp offset', () => {
  const more = trail.read(standing(plainBike, { ...plainSetup, clampOffset: 35 })) as number;
  expect(more).toBeLessThan((trail.read(standing()) as number) - 5);
});
