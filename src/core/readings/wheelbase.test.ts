/** Tests of the reading wheelbase: the worked number, and the plain bike by hand. */
import { expect, it } from 'vitest';
import { stanceWith, standing } from '../../../tests/support/standing.ts';
import { poseOnGround } from '../chassis/pose.ts';
import { radians } from '../units/convert.ts';
import { wheelbase } from './wheelbase.ts';

it('of axles 1400 apart on radii of 300 and 320 is 1399.8571', () => {
  const pose = poseOnGround(0, 0, 1400, 0, 320, 300);
  if (!pose.ok) throw new Error(pose.reason);
  expect(wheelbase.read(stanceWith({ pose }))).toBeCloseTo(1399.8571, 4);
});

it('of the plain bike is the leg of a triangle over its axle distance and the difference of its radii', () => {
  const [rake, fall] = [radians(24), radians(9.5)];
  // Fork 725 long, 5 of it above the clamp, its axle 30 ahead of the steering axis.
  const ahead = 520 + 720 * Math.sin(rake) + 30 * Math.cos(rake) + 580 * Math.cos(fall);
  const above = 530 - 720 * Math.cos(rake) + 30 * Math.sin(rake) + 580 * Math.sin(fall);
  const [front, rear] = [299.9, 320.4];
  expect(wheelbase.read(standing())).toBeCloseTo(Math.sqrt(ahead ** 2 + above ** 2 - (rear - front) ** 2), 9);
});
