/** The line of force at the driven wheel off the gas, with the engine braking, for every kind of drive. */
import { hasRuns } from '../parts/drive-kind.ts';
import { chainSlope, type SquatSlope } from '../drive/squat-slope.ts';
import type { Stance } from './stance.ts';

/**
 * Lower run above the pivot, square to the run, mm: below zero in the usual case, where it passes under the pivot.
 * The taut run, tangent to both pitch circles.
 */
export function lowerRunLever(stance: Stance): number {
  const { lowerRunAngle, pose, machine } = stance;
  const rise = (pose.pivot.y - machine.rearRadius) * Math.cos(lowerRunAngle);
  return pose.pivot.x * Math.sin(lowerRunAngle) - rise - machine.rearSprocketRadius;
}

/**
 * Slope (rise per run toward the front) of the line from the rear contact patch along which the engine's braking acts
 * without loading or unloading the rear spring, in its two parts. The lower run is tight: a braking force B at the
 * patch makes a pull B·wheelRadius / sprocketRadius along it, forward on the rear sprocket. Moments about the pivot
 * of arm and wheel as one massless body: as on the gas (drive/squat-slope.ts), with the lower run's lever and the
 * opposite sign. A positive slope draws the rear down while load transfer lifts it. Shaft and hub: through the pivot.
 */
export function engineBrakingSlopeOf(stance: Stance): SquatSlope {
  const { machine, pose } = stance;
  if (!hasRuns(machine.driveKind)) return { swingarm: stance.swingarmSlope, chain: 0 };
  const { rearRadius, rearSprocketRadius } = machine;
  return {
    swingarm: stance.swingarmSlope,
    chain: -chainSlope(pose.pivot.x, lowerRunLever(stance), rearRadius, rearSprocketRadius),
  };
}
