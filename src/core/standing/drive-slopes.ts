/** The line of force at the driven wheel off the gas, with the engine braking, for every kind of drive. */
import { hasRuns } from '../parts/drive-kind.ts';
import { chainSlope, type SquatSlope } from '../drive/squat-slope.ts';
import { chainRun } from './chain-run.ts';
import type { Stance } from './stance.ts';
import {
  changeOfChainSlope,
  changeOfRunLever,
  changeOfSwingarmSlope,
  type StanceChange,
} from './stance-change.ts';

/**
 * Lower run above the pivot, square to the run, mm: below zero in the usual case, where it passes under the pivot.
 * The taut run, tangent to both pitch circles.
 */
export function lowerRunLever(stance: Stance): number {
  return chainRun(stance, 'lower').lever;
}

/** Which lower run pulls while the throttle is closed. */
export interface LowerPull {
  /** What the pull acts with above the pivot, mm: the free run's lever, or minus the lower guide's radius where it bends. */
  readonly lever: number;
  readonly onGuide: boolean;
}

/**
 * The lower run's lever about the pivot, mm above it. Where the pivot lies between the run's ends and the run would pass
 * less than the lower guide's radius below it, the run lies under the guide, whose push goes through the pivot.
 */
export function lowerPull(stance: Stance): LowerPull {
  const { lowerGuideRadius } = stance.machine;
  const { lever, pivotAlong, length } = chainRun(stance, 'lower');
  const onGuide =
    lowerGuideRadius !== null && lever > -lowerGuideRadius && pivotAlong > 0 && pivotAlong < length;
  return { lever: onGuide ? -lowerGuideRadius : lever, onGuide };
}

/**
 * Slope (rise per run toward the front) of the line from the rear contact patch along which the engine's braking acts
 * without loading or unloading the rear spring, in its two parts. The lower run is tight: a braking force B at the
 * patch makes a pull B·wheelRadius / sprocketRadius along it, forward on the rear sprocket. Moments about the pivot
 * of arm and wheel as one massless body: as on the gas (drive/squat-slope.ts), with the lower run's lever and the
 * opposite sign. A positive slope draws the rear down while load transfer lifts it. Shaft and hub: the same line as on
 * the gas, through the pivot or the torque arm's crossing.
 * A run under the lower guide pulls with the guide's radius.
 */
export function engineBrakingSlopeOf(stance: Stance): SquatSlope {
  const { machine, pose } = stance;
  if (!hasRuns(machine.driveKind))
    return { swingarm: stance.swingarmSlope, chain: stance.torqueHold === null ? 0 : stance.chainSlope };
  const { rearRadius, rearSprocketRadius } = machine;
  return {
    swingarm: stance.swingarmSlope,
    chain: -chainSlope(pose.pivot.x, lowerPull(stance).lever, rearRadius, rearSprocketRadius),
  };
}

/** Change of that slope per mm of travel, both parts together, while the stance changes as given. */
export function changeOfEngineBrakingSlope(on: Stance, change: StanceChange): number {
  const swingarm = changeOfSwingarmSlope(on, change);
  if (!hasRuns(on.machine.driveKind)) return swingarm + changeOfChainSlope(on, change);
  const { rearRadius, rearSprocketRadius } = on.machine;
  const { lever, onGuide } = lowerPull(on);
  const pivotX = on.pose.pivot.x;
  const slope = -chainSlope(pivotX, lever, rearRadius, rearSprocketRadius);
  const moved = onGuide ? 0 : changeOfRunLever(on, change, 'lower');
  return swingarm + (rearRadius * moved) / (rearSprocketRadius * pivotX) - (slope * change.pivot.x) / pivotX;
}
