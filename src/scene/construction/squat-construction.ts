/** Where the lines of the squat construction run: tight chain run, swingarm line, their crossing, squat and load lines. */
import { onGround } from '../../core/chassis/pose.ts';
import { hasRuns } from '../../core/parts/drive-kind.ts';
import { crossing, type Line } from '../../core/plane/line.ts';
import type { Point } from '../../core/plane/point.ts';
import type { Stance } from '../../core/standing/stance.ts';
import { drivePlaces, upperRun } from '../chain/chain-drawing.ts';

export interface SquatConstruction {
  /** From rear axle through the pivot. */
  readonly swingarm: Line;
  /** The pulling stretch of the upper run at the rear sprocket, or the torque arm of a shaft's housing; null with neither. */
  readonly chain: Line | null;
  /** Where both cross, the instant centre; 'parallel' when they do not, as without a run. */
  readonly instantCentre: Point | 'parallel';
  /** Slope of the squat line, rise per run toward the front. */
  readonly squatSlope: number;
  /** The point above the front patch at the height of the centre of gravity; null without one. */
  readonly loadPoint: Point | null;
}

/** The torque arm on the ground frame, from the housing's bolt to the frame's; null without one. */
export function torqueArmLine({ torqueHold, pose }: Stance): Line | null {
  return torqueHold === null
    ? null
    : { from: onGround(pose, torqueHold.bolt), to: onGround(pose, torqueHold.anchor) };
}

export function squatConstruction(standing: Stance): SquatConstruction {
  const swingarm = {
    from: standing.rearAxle,
    to: standing.pose.pivot,
  };
  const pieces = hasRuns(standing.machine.driveKind) ? upperRun(drivePlaces(standing)) : [];
  const chain = pieces.length > 0 ? pieces[0] : torqueArmLine(standing);
  return {
    swingarm,
    chain,
    instantCentre: chain === null ? 'parallel' : crossing(swingarm, chain),
    squatSlope: standing.swingarmSlope + standing.chainSlope,
    loadPoint:
      standing.mass > 0 && standing.centre.y > 0
        ? { x: standing.pose.wheelbase, y: standing.centre.y }
        : null,
  };
}
