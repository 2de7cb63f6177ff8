/** Tests of the reading rearTravelLeft: the worked numbers, with and without springs. */
import { expect, it } from 'vitest';
import { sprungAt } from '../../../tests/support/ridden-bike.ts';
import { standing } from '../../../tests/support/standing.ts';
import { plainBike, plainSetup } from '../../../tests/support/plain-bike.ts';
import { rearTravelLeft } from './rear-travel-left.ts';

it('of 130 with 35 used is 95 to the stop', () => {
  expect(rearTravelLeft.read(standing(plainBike, plainSetup, { front: 0, rear: 35 }))).toBeCloseTo(95, 12);
});

it('ends where the coils close when the springs say that they do', () => {
  const on = sprungAt({ front: 0, rear: 35 });
  expect(rearTravelLeft.read({ ...on, sprung: { ...on.sprung, most: { front: 120, rear: 120 } } })).toBe(85);
});
