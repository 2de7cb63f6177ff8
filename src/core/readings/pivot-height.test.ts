/** Tests of the reading pivotHeight: the worked number. */
import { expect, it } from 'vitest';
import { stanceWith } from '../../../tests/support/standing.ts';
import { poseOnGround } from '../chassis/pose.ts';
import { radians } from '../units/convert.ts';
import { pivotHeight } from './pivot-height.ts';

it('over an axle at 320 with an arm of 580 at 10° below horizontal is 420.716', () => {
  const fall = radians(10);
  const axle = { x: -580 * Math.cos(fall), y: -580 * Math.sin(fall) };
  // Equal wheels and level axles leave the frame as it was described.
  const pose = poseOnGround(axle.x, axle.y, 800, axle.y, 320, 320);
  if (!pose.ok) throw new Error(pose.reason);
  expect(pose.pitch).toBe(0);
  expect(pivotHeight.read(stanceWith({ pose }))).toBeCloseTo(420.716, 3);
});
