/** How a bike on its wheels changes with the travel used: the exact derivatives of its stance. */
import { hasRuns } from '../parts/drive-kind.ts';
import { armAnglePerTravel } from '../linkage/suspension.ts';
import type { Point } from '../plane/point.ts';
import type { Stance } from './stance.ts';

/** Changes per mm of travel used at one end, in the units and the frame of `Stance`. */
export interface StanceChange {
  readonly armAngle: number;
  readonly pitch: number;
  readonly pivot: Point;
  readonly wheelbase: number;
  readonly swingarmSlope: number;
  readonly centre: Point;
}

/**
 * Change of a stance per mm of travel used at one end, the other end held: mm, radians and slopes per mm, ground frame
 * from the rear contact patch. Derivation: the axles move in the frame, along the legs or about the pivot; the frame
 * turns until one axle is again higher than the other by the difference of the radii; all that is fixed to the frame
 * turns about the rear axle. At a kink, such as where the chain begins to lie on the guide, that of the stance's side.
 */
export function changeOfStance(on: Stance, end: 'front' | 'rear'): StanceChange {
  const { machine, pose, travel } = on;
  const { wheelbase } = pose;
  const { x: pivotX, y: pivotY } = pose.pivot;
  const { rearRadius, frontRadius } = machine;
  const armAngle = end === 'rear' ? armAnglePerTravel(machine.rear, travel.rear) : 0;
  // How either axle moves while the frame is held, seen from the ground.
  const rearX = armAngle * (pivotY - rearRadius);
  const rearY = -armAngle * pivotX;
  const { x, y } = machine.front.downLegs;
  const frontX = end === 'front' ? pose.sin * y - pose.cos * x : 0;
  const frontY = end === 'front' ? -pose.sin * x - pose.cos * y : 0;

  const pitch = (rearY - frontY) / wheelbase;
  const longer = frontX - rearX - pitch * (frontRadius - rearRadius);
  const pivotMove = { x: pitch * (rearRadius - pivotY) - rearX, y: pitch * pivotX - rearY };
  const { mass } = on;
  const { frontUnsprung, rearUnsprung } = machine;
  const carried = mass - frontUnsprung - rearUnsprung;
  // Moments of what is fixed to the frame about the pivot; heights above seat and marks stay square to the ground.
  const ahead = mass * on.centre.x - frontUnsprung * wheelbase - carried * pivotX;
  const above =
    mass * on.centre.y -
    rearUnsprung * rearRadius -
    frontUnsprung * frontRadius -
    machine.riderMass * machine.riderHeight -
    machine.passengerMass * machine.passengerHeight -
    machine.loadMass * machine.loadHeight -
    carried * pivotY;
  return {
    armAngle,
    pitch,
    pivot: pivotMove,
    wheelbase: longer,
    swingarmSlope: (pivotMove.y - on.swingarmSlope * pivotMove.x) / pivotX,
    centre:
      mass > 0
        ? {
            x: (carried * pivotMove.x - pitch * above + frontUnsprung * longer) / mass,
            y: (carried * pivotMove.y + pitch * ahead) / mass,
          }
        : { x: 0, y: 0 },
  };
}

/**
 * Change of the chain's part of the squat slope per mm of travel, while the stance changes as given. Derivation: the
 * countershaft turns about the rear axle, and the run with it and with the angle between run and centres. A run that lies
 * on the guide keeps the guide's radius. Zero with a shaft or hub drive.
 */
export function changeOfChainSlope(on: Stance, change: StanceChange): number {
  const { machine, pose } = on;
  const { x: centresX } = on.countershaft;
  if (!hasRuns(machine.driveKind)) return 0;
  const { x: pivotX, y: pivotY } = pose.pivot;
  const { rearRadius, rearSprocketRadius, frontSprocketRadius } = machine;
  let lever = 0;
  if (on.pullLever === on.upperRunLever) {
    const centresY = on.countershaft.y - rearRadius;
    const difference = rearSprocketRadius - frontSprocketRadius;
    const square = centresX * centresX + centresY * centresY;
    const run = Math.sqrt(square - difference * difference);
    // Toward the front along the run.
    const cos = (centresX * run + centresY * difference) / square;
    const sin = (centresY * run - centresX * difference) / square;
    const moveX = change.pivot.x - change.pitch * (on.countershaft.y - pivotY);
    const moveY = change.pivot.y + change.pitch * (centresX - pivotX);
    const turn = (centresX * moveY - centresY * moveX) / square;
    const apart = (centresX * moveX + centresY * moveY) / square;
    const along = (pivotY - rearRadius) * sin + pivotX * cos;
    lever = change.pivot.x * sin - change.pivot.y * cos + (turn + (difference * apart) / run) * along;
  }
  return (-rearRadius * lever) / (rearSprocketRadius * pivotX) - (on.chainSlope * change.pivot.x) / pivotX;
}
