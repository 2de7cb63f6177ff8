/** How a bike on its wheels changes with the travel used: the exact derivatives of its stance. */
import { hasRuns } from '../parts/drive-kind.ts';
import { armAnglePerTravel } from '../linkage/suspension.ts';
import type { Stance } from './stance.ts';

/** Changes per mm of travel used at one end, in the units and the frame of `Stance`. */
export interface StanceChange {
  readonly armAngle: number;
  readonly pitch: number;
  readonly originX: number;
  readonly originY: number;
  readonly wheelbase: number;
  readonly swingarmSlope: number;
  readonly centreX: number;
  readonly centreY: number;
}

/**
 * Change of a stance per mm of travel used at one end, the other end held: mm, radians and slopes per mm, ground frame
 * from the rear contact patch. Derivation: the axles move in the frame, along the legs or about the pivot; the frame
 * turns until one axle is again higher than the other by the difference of the radii; all that is fixed to the frame
 * turns about the rear axle. At a kink, such as where the chain begins to lie on the guide, that of the stance's side.
 */
export function changeOfStance(on: Stance, end: 'front' | 'rear'): StanceChange {
  const { machine, pose, travel } = on;
  const { originX, originY, wheelbase } = pose;
  const { rearRadius, frontRadius } = machine;
  const armAngle = end === 'rear' ? armAnglePerTravel(machine.rear, travel.rear) : 0;
  // How either axle moves while the frame is held, seen from the ground.
  const rearX = armAngle * (originY - rearRadius);
  const rearY = -armAngle * originX;
  const { x, y } = machine.front.downLegs;
  const frontX = end === 'front' ? pose.sin * y - pose.cos * x : 0;
  const frontY = end === 'front' ? -pose.sin * x - pose.cos * y : 0;

  const pitch = (rearY - frontY) / wheelbase;
  const longer = frontX - rearX - pitch * (frontRadius - rearRadius);
  const pivotX = pitch * (rearRadius - originY) - rearX;
  const pivotY = pitch * originX - rearY;
  const { mass } = on;
  const { frontUnsprung, rearUnsprung } = machine;
  const carried = mass - frontUnsprung - rearUnsprung;
  // Moments of what is fixed to the frame about the pivot; heights above seat and marks stay square to the ground.
  const ahead = mass * on.centreX - frontUnsprung * wheelbase - carried * originX;
  const above =
    mass * on.centreY -
    rearUnsprung * rearRadius -
    frontUnsprung * frontRadius -
    machine.riderMass * machine.riderHeight -
    machine.passengerMass * machine.passengerHeight -
    machine.loadMass * machine.loadHeight -
    carried * originY;
  return {
    armAngle,
    pitch,
    originX: pivotX,
    originY: pivotY,
    wheelbase: longer,
    swingarmSlope: (pivotY - on.swingarmSlope * pivotX) / originX,
    centreX: mass > 0 ? (carried * pivotX - pitch * above + frontUnsprung * longer) / mass : 0,
    centreY: mass > 0 ? (carried * pivotY + pitch * ahead) / mass : 0,
  };
}

/**
 * Change of the chain's part of the squat slope per mm of travel, while the stance changes as given. Derivation: the
 * countershaft turns about the rear axle, and the run with it and with the angle between run and centres. A run that lies
 * on the guide keeps the guide's radius. Zero with a shaft or hub drive.
 */
export function changeOfChainSlope(on: Stance, change: StanceChange): number {
  const { machine, pose, countershaftX: centresX } = on;
  if (!hasRuns(machine.driveKind)) return 0;
  const { originX, originY } = pose;
  const { rearRadius, rearSprocketRadius, frontSprocketRadius } = machine;
  let lever = 0;
  if (on.pullLever === on.upperRunLever) {
    const centresY = on.countershaftY - rearRadius;
    const difference = rearSprocketRadius - frontSprocketRadius;
    const square = centresX * centresX + centresY * centresY;
    const run = Math.sqrt(square - difference * difference);
    // Toward the front along the run.
    const cos = (centresX * run + centresY * difference) / square;
    const sin = (centresY * run - centresX * difference) / square;
    const moveX = change.originX - change.pitch * (on.countershaftY - originY);
    const moveY = change.originY + change.pitch * (centresX - originX);
    const turn = (centresX * moveY - centresY * moveX) / square;
    const apart = (centresX * moveX + centresY * moveY) / square;
    const along = (originY - rearRadius) * sin + originX * cos;
    lever = change.originX * sin - change.originY * cos + (turn + (difference * apart) / run) * along;
  }
  return (-rearRadius * lever) / (rearSprocketRadius * originX) - (on.chainSlope * change.originX) / originX;
}
