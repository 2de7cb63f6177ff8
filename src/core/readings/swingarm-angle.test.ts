/** Tests of the reading swingarmAngle: the worked number and its sign. */
import { expect, it } from 'vitest';
import { standing } from '../../../tests/support/standing.ts';
import { plainBike, withSwingarm } from '../../../tests/support/plain-bike.ts';
import { degrees } from '../units/convert.ts';
import { swingarmAngle } from './swingarm-angle.ts';

it('with the pivot 100 above the axle on an arm of 580 is 9.928°', () => {
  // A bike laid level has its arm's fall in the frame.
  const bike = withSwingarm(plainBike, { toppedOutAngleDeg: degrees(Math.asin(100 / 580)) });
  const on = standing(bike);
  expect(degrees(swingarmAngle.read(on) as number) - degrees(on.pose.pitch)).toBeCloseTo(9.928, 3);
});

it('is negative when the axle is above the pivot', () => {
  const on = standing(withSwingarm(plainBike, { toppedOutAngleDeg: -8 }));
  expect(swingarmAngle.read(on)).toBeLessThan(0);
  expect(on.pose.pivot.y).toBeLessThan(on.rearAxle.y);
});
