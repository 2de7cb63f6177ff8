/** Tests of the reading tyreToClampGap: the worked number, its absence, and the drawn wheel. */
import { expect, it } from 'vitest';
import { plainBike, plainSetup, withFork } from '../../../tests/support/plain-bike.ts';
import { stanceWith } from '../../../tests/support/standing.ts';
import { made, standing } from '../../../tests/support/standing.ts';
import { frontAxle } from '../chassis/front-end.ts';
import { tyreToClampGap } from './tyre-to-clamp-gap.ts';
import { absent } from './absent.ts';

it('of legs of 720, 120 of travel, a clamp 215 deep and a radius of 300 is 85', () => {
  const { front } = made();
  const on = stanceWith({
    machine: { front: { ...front, legLength: 720, travel: 120, lowerClampDepth: 215 }, frontRadius: 300 },
  });
  expect(tyreToClampGap.read(on)).toBe(85);
});

it('is the distance of the tyre from the clamp’s underside with the fork fully in, whatever the axle leads', () => {
  const bike = withFork(plainBike, { lowerClampDepth: 200, axleLead: 25 });
  const { front, frontRadius } = made(bike, plainSetup);
  const axle = frontAxle(front, front.travel);
  // The clamps' plane at right angles to the legs, and the axle's distance from it.
  const topX = front.head.x + front.clampOffset * Math.cos(front.axisAngle);
  const topY = front.head.y + front.clampOffset * Math.sin(front.axisAngle);
  const below = (axle.x - topX) * Math.sin(front.legLean) - (axle.y - topY) * Math.cos(front.legLean);
  expect(tyreToClampGap.read(standing(bike))).toBeCloseTo(below - 200 - frontRadius, 9);
});

it('shrinks by a millimetre with each that the fork is pushed up, and is not there without the clamp’s depth', () => {
  const bike = withFork(plainBike, { lowerClampDepth: 200 });
  const gap = (forkTubes: number) =>
    Number(tyreToClampGap.read(standing(bike, { ...plainSetup, forkTubes })));
  expect(gap(15)).toBeCloseTo(gap(5) - 10, 9);
  expect(tyreToClampGap.read(standing())).toBe(absent('noClampDepth'));
});
