/** The slope along which a wheel's torque acts that a stay holds: a caliper's bracket, or a shaft's housing. */
import type { StayHold } from './rear-brake.ts';

/** What of a stance's change the slope depends on, per mm of travel used at one end. */
interface StayChange {
  readonly armAngle: number;
  readonly pivot: { readonly x: number };
}

/**
 * What a stay adds to the swingarm's slope: the torque at the patch over the stay's distance from the axle is the pull in
 * the stay, and its moment about the pivot is held by a load at the patch `pivotX` mm behind. It is zero where the stay points at the pivot,
 * and parallel lines need no special case: the whole slope is then that of the arm itself.
 */
export function staySlope(hold: StayHold, rearRadius: number, pivotX: number): number {
  return -(rearRadius * hold.aboutPivot) / (hold.aboutAxle * pivotX);
}

/**
 * Change of `staySlope` per mm of travel, while the stance changes as given. Derivation: bracket and stay keep their
 * lengths, so the bracket's bolt moves square to the stay, as far as the axle takes the bracket along.
 */
export function changeOfStaySlope(
  hold: StayHold,
  rearRadius: number,
  pivotX: number,
  change: StayChange,
): number {
  const { axle, bolt, anchor, stayX, stayY, aboutAxle, aboutPivot } = hold;
  const stayLength = Math.hypot(anchor.x - bolt.x, anchor.y - bolt.y);
  const bracketX = bolt.x - axle.x;
  const bracketY = bolt.y - axle.y;
  // Moves per radian of arm angle, counter-clockwise about the pivot.
  const aside = (bracketX * axle.y - bracketY * axle.x) / aboutAxle;
  const boltX = -aside * stayY;
  const boltY = aside * stayX;
  const turnX = -boltX / stayLength;
  const turnY = -boltY / stayLength;
  const aboutAxleChange =
    (boltX + axle.y) * stayY - (boltY - axle.x) * stayX + bracketX * turnY - bracketY * turnX;
  const aboutPivotChange = boltX * stayY - boltY * stayX + bolt.x * turnY - bolt.y * turnX;
  const ratio = aboutPivot / aboutAxle;
  const ratioChange = ((aboutPivotChange - ratio * aboutAxleChange) / aboutAxle) * change.armAngle;
  return -(rearRadius * (ratioChange - (ratio * change.pivot.x) / pivotX)) / pivotX;
}
