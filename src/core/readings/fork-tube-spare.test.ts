/** Tests of the reading forkTubeSpare: the worked number and its absence. */
import { expect, it } from 'vitest';
import { plainBike, plainSetup, withFork } from '../../../tests/support/plain-bike.ts';
import { standing } from '../../../tests/support/standing.ts';
import { forkTubeSpare } from './fork-tube-spare.ts';
import { absent } from './absent.ts';

it('of a height of 5 with a least height of 2 is 3', () => {
  expect(forkTubeSpare.read(standing(withFork(plainBike, { leastHeight: 2 })))).toBe(3);
});

it('falls below zero when the fork stands lower than its maker allows, extender or not', () => {
  const bike = withFork(plainBike, { leastHeight: 2 });
  const low = { ...plainSetup, forkTubes: 5, forkExtenders: 8 };
  expect(forkTubeSpare.read(standing(bike, low))).toBe(-5);
});

it('has no number while the least height is not known', () => {
  expect(forkTubeSpare.read(standing())).toBe(absent('noLeastHeight'));
});
