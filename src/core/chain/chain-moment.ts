/** The chain's pull about the swingarm pivot, as a torque that people can compare. */
import type { Stance } from '../standing/stance.ts';

/**
 * Torque in N·m with which the chain turns arm and wheel about the pivot for every 1000 N of thrust at the rear patch:
 * pull (thrust·wheelRadius / sprocketRadius) times its distance from the pivot. Positive pulls the rear down. mm times
 * 1000 N is 1 N·m. Worked: wheel 315, sprocket 112.5, run 40 above the pivot give 112.
 */
export function chainMomentPerThousand(stance: Stance): number {
  const { machine, pullLever } = stance;
  return (machine.rearRadius * pullLever) / machine.rearSprocketRadius;
}
