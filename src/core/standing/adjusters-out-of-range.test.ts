/** Tests of adjusters beyond their range. */
import { expect, it } from 'vitest';
import { plainBike, plainSetup } from '../../../tests/support/plain-bike.ts';
import { linkedBike, sprungSetup } from '../../../tests/support/linked-bike.ts';
import { adjustersOutOfRange } from './adjusters-out-of-range.ts';

const keys = (changes: object) =>
  adjustersOutOfRange(plainBike, { ...plainSetup, ...changes }).map(({ adjuster }) => adjuster.key);

it('are none on usual bikes', () => {
  expect(adjustersOutOfRange(plainBike, plainSetup)).toEqual([]);
  expect(adjustersOutOfRange(linkedBike, sprungSetup)).toEqual([]);
});

it('are named in the order of the list, each with its range', () => {
  expect(keys({ riderMass: 900, forkTubes: 200 })).toEqual(['forkTubes', 'riderMass']);
  expect(adjustersOutOfRange(plainBike, { ...plainSetup, forkTubes: 200 })[0]).toMatchObject({
    value: 200,
    least: -20,
    most: 40,
  });
});

it('begin beyond the end itself', () => {
  expect(keys({ forkTubes: 40 })).toEqual([]);
  expect(keys({ forkTubes: 40.1 })).toEqual(['forkTubes']);
});
