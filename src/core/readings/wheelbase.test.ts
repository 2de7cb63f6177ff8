/** Tests of the reading wheelbase: the worked number. */
import { expect, it } from 'vitest';
import { stanceWith, standing } from '../../../tests/support/standing.ts';
import { poseOnGround } from '../chassis/pose.ts';
import { wheelbase } from './wheelbase.ts';

it('of axles 1400 apart on radii of 300 and 320 is 1399.8571', () => {
  const pose = poseOnGround(0, 0, 1400, 0, 320, 300);
  if (!pose.ok) throw new Error(pose.reason);
  expect(wheelbase.read(stanceWith({ pose }))).toBeCloseTo(1399.8571, 4);
});

it('is the distance between the patches of a standing bike', () => {
  const on = standing();
  expect(wheelbase.read(on)).toBeCloseTo(on.frontAxleX - on.rearAxleX, 12);
});
