/** Tests of the chain's torque about the pivot. */
import { expect, it } from 'vitest';
import { stanceWith, standing } from '../../../tests/support/standing.ts';
import { chainMomentPerThousand } from './chain-moment.ts';

it('of a run 40 above the pivot is 112 N·m for every 1000 N', () => {
  const on = stanceWith({ pullLever: 40, machine: { rearRadius: 315, rearSprocketRadius: 112.5 } });
  expect(chainMomentPerThousand(on)).toBeCloseTo(112, 12);
});

it('divided by the pivot’s distance ahead of the patch is the load that the chain takes from the wheel', () => {
  const on = standing();
  expect(chainMomentPerThousand(on) / on.pose.pivot.x).toBeCloseTo(-on.chainSlope, 12);
});
