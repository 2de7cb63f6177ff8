/** The chain's pull about the swingarm pivot, as a torque that people can compare. */
import type { Stance } from '../standing/stance.ts';

/**
 * Torque in N·m with which the chain turns arm and wheel about the pivot for every 1000 N of thrust at the rear patch:
 * pull (thrust·wheelRadius / sprocketRadius) times its distance from the pivot. Positive pulls the rear down. mm times
 * 1000 N is 1 N·m.
 * Example: rear wheel radius 315 mm, rear teeth 45, upper run above the pivot 40 mm → 110.73 N·m.
 */
export function chainMomentPerThousand(stance: Stance): number {
  const { machine, pullLever } = stance;
  return (machine.rearRadius * pullLever) / machine.rearSprocketRadius;
}
