/** How a bike on its wheels changes with the travel used: the exact derivatives of its stance. */
import { hasRuns } from '../parts/drive-kind.ts';
import { armAnglePerTravel } from '../linkage/suspension.ts';
import type { Point } from '../plane/point.ts';
import { chainRun, runDifference } from './chain-run.ts';
import type { Stance } from './stance.ts';
import { changeOfStaySlope } from './stay-slope.ts';

/**
 * How the frame, the arm and the wheelbase change per mm of travel used at one end, in the units and the frame of
 * `Stance`.
 */
export interface StanceChange {
  readonly armAngle: number;
  readonly pitch: number;
  readonly pivot: Point;
  readonly wheelbase: number;
}

/**
 * How a stance changes per mm of fork travel, the rear held: mm and radians per mm, ground frame from the rear
 * contact patch. Derivation: the front axle moves up the legs; the frame turns about the rear axle until the height
 * between the axles is again the difference of the radii.
 */
export function changeByFront({ machine, pose }: Stance): StanceChange {
  const { rearRadius, frontRadius, front } = machine;
  const { x, y } = front.downLegs;
  // Up the legs, as the front axle moves in the frame, seen from the ground.
  const upX = pose.sin * y - pose.cos * x;
  const upY = -pose.sin * x - pose.cos * y;
  const pitch = -upY / pose.wheelbase;
  return {
    armAngle: 0,
    pitch,
    pivot: { x: pitch * (rearRadius - pose.pivot.y), y: pitch * pose.pivot.x },
    wheelbase: upX - pitch * (frontRadius - rearRadius),
  };
}

/** The same per mm of rear travel, the fork held: the rear axle moves about the pivot, and the frame turns likewise. */
export function changeByRear({ machine, pose, travel }: Stance): StanceChange {
  const { rearRadius, frontRadius, rear } = machine;
  const armAngle = armAnglePerTravel(rear, travel.rear);
  // About the pivot, as the rear axle moves in the frame, seen from the ground.
  const roundX = armAngle * (pose.pivot.y - rearRadius);
  const roundY = -armAngle * pose.pivot.x;
  const pitch = roundY / pose.wheelbase;
  return {
    armAngle,
    pitch,
    pivot: { x: pitch * (rearRadius - pose.pivot.y) - roundX, y: pitch * pose.pivot.x - roundY },
    wheelbase: -roundX - pitch * (frontRadius - rearRadius),
  };
}

/** Change of the swingarm's part of the squat slope per mm of travel, while the stance changes as given. */
export function changeOfSwingarmSlope({ pose, swingarmSlope }: Stance, change: StanceChange): number {
  return (change.pivot.y - swingarmSlope * change.pivot.x) / pose.pivot.x;
}

/**
 * Change of the chain's part of the squat slope per mm of travel, while the stance changes as given. A run that lies
 * on the guide keeps the guide's radius. Of a torque arm in the chain's place; zero with any other shaft or hub drive.
 */
export function changeOfChainSlope(on: Stance, change: StanceChange): number {
  const { machine, pose } = on;
  const pivotX = pose.pivot.x;
  const { torqueHold } = on;
  if (torqueHold !== null) return changeOfStaySlope(torqueHold, machine.rearRadius, pivotX, change);
  if (!hasRuns(machine.driveKind)) return 0;
  const { rearRadius, rearSprocketRadius } = machine;
  const lever = on.pullLever === on.upperRunLever ? changeOfRunLever(on, change, 'upper') : 0;
  return (-rearRadius * lever) / (rearSprocketRadius * pivotX) - (on.chainSlope * change.pivot.x) / pivotX;
}

/**
 * Change of a free run's lever above the pivot, mm per mm of travel. Derivation: the countershaft turns about the rear
 * axle, and the run with it and with the angle between run and centres, which the lower run has on the other side.
 */
export function changeOfRunLever(on: Stance, change: StanceChange, which: 'upper' | 'lower'): number {
  const { machine, pose, countershaft } = on;
  const { x: centresX } = countershaft;
  const centresY = countershaft.y - machine.rearRadius;
  const square = centresX * centresX + centresY * centresY;
  const { way, length, pivotAlong } = chainRun(on, which);
  const moveX = change.pivot.x - change.pitch * (countershaft.y - pose.pivot.y);
  const moveY = change.pivot.y + change.pitch * (centresX - pose.pivot.x);
  const turn = (centresX * moveY - centresY * moveX) / square;
  const apart = (centresX * moveX + centresY * moveY) / square;
  const turned = turn + (runDifference(on, which) * apart) / length;
  return change.pivot.x * way.y - change.pivot.y * way.x + turned * pivotAlong;
}
