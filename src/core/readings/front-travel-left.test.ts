/** Tests of the reading frontTravelLeft: the worked numbers, with and without springs. */
import { expect, it } from 'vitest';
import { sprungAt } from '../../../tests/support/ridden-bike.ts';
import { standing } from '../../../tests/support/standing.ts';
import { plainBike, plainSetup } from '../../../tests/support/plain-bike.ts';
import { frontTravelLeft } from './front-travel-left.ts';

it('of 120 with 42 used is 78 to the stop', () => {
  expect(frontTravelLeft.read(standing(plainBike, plainSetup, { front: 42, rear: 0 }))).toBe(78);
});

it('ends where the coils close when the springs say that they do', () => {
  const on = sprungAt({ front: 42, rear: 0 });
  expect(frontTravelLeft.read({ ...on, sprung: { ...on.sprung, most: { front: 110, rear: 130 } } })).toBe(68);
});
