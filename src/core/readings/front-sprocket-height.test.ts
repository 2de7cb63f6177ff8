/** Tests of the reading frontSprocketHeight: the worked number and the turn of the frame, on standing bikes. */
import { expect, it } from 'vitest';
import { standing } from '../../../tests/support/standing.ts';
import { plainBike, plainSetup, withFork, withFrame } from '../../../tests/support/plain-bike.ts';
import { radians } from '../units/convert.ts';
import { frontSprocketHeight } from './front-sprocket-height.ts';

/** Both wheels 640, and the fork as long as keeps the front axle level with the rear one: the frame stands level. */
function level(countershaft: { x: number; y: number }) {
  const rake = radians(24);
  const axleBelow = 580 * Math.sin(radians(9.5));
  const leg = (530 + 30 * Math.sin(rake) + axleBelow) / Math.cos(rake);
  const bike = withFork(withFrame(plainBike, { countershaft }), { length: leg + plainSetup.forkTubes });
  const tyre = { diameter: 640 };
  return { bike, setup: { ...plainSetup, frontTyre: tyre, rearTyre: tyre }, pivotHeight: 320 + axleBelow };
}

it('15 above the pivot of a level frame is 15 more than the pivot’s height', () => {
  const { bike, setup, pivotHeight } = level({ x: 0, y: 15 });
  expect(frontSprocketHeight.read(standing(bike, setup))).toBeCloseTo(pivotHeight + 15, 9);
});

it('turns with the frame about the rear axle when the fork goes in', () => {
  const { bike, setup } = level({ x: 75, y: 0 });
  const forkTravel = 40;
  const on = standing(bike, setup, { front: forkTravel, rear: 0 });
  // The front axle comes nearer to the head along the leg; level wheels again, so the frame turns about the rear axle.
  const rake = radians(24);
  const ahead = 520 + (on.machine.front.legLength - forkTravel) * Math.sin(rake) + 30 * Math.cos(rake);
  const behind = 580 * Math.cos(radians(9.5));
  const above = forkTravel * Math.cos(rake);
  const turn = -Math.atan2(above, ahead + behind);
  const fromAxle = { x: behind + 75, y: 580 * Math.sin(radians(9.5)) };
  expect(frontSprocketHeight.read(on)).toBeCloseTo(
    320 + Math.sin(turn) * fromAxle.x + Math.cos(turn) * fromAxle.y,
    9,
  );
});
