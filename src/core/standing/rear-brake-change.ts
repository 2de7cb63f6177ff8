/** How the rear brake's hold changes with the travel used: the exact derivative of its slope. */
import type { NoEquilibrium } from './no-equilibrium.ts';
import { stayHold, type RearBrake } from './rear-brake.ts';
import { changeOfSwingarmSlope, type StanceChange } from './stance-change.ts';
import type { Stance } from './stance.ts';

/**
 * Change of `rearBrakeSlope` per mm of travel used at one end, while the stance changes as given. Derivation: bracket
 * and stay keep their lengths, so the bracket's bolt moves square to the stay, as far as the axle takes the bracket
 * along. No answer where the slope itself has none.
 */
export function changeOfRearBrakeSlope(
  brake: RearBrake,
  on: Stance,
  change: StanceChange,
): number | NoEquilibrium {
  const arm = changeOfSwingarmSlope(on, change);
  if (brake.caliper === 'onArm') return arm;
  const { machine, pose } = on;
  const hold = stayHold(brake, machine.rear.arm, on.arm.angle);
  if (!hold.ok) return hold;
  const { axle, bolt, stayX, stayY, aboutAxle, aboutPivot } = hold;
  const bracketX = bolt.x - axle.x;
  const bracketY = bolt.y - axle.y;
  // Moves per radian of arm angle, counter-clockwise about the pivot.
  const aside = (bracketX * axle.y - bracketY * axle.x) / aboutAxle;
  const boltX = -aside * stayY;
  const boltY = aside * stayX;
  const turnX = -boltX / brake.stayLength;
  const turnY = -boltY / brake.stayLength;
  const aboutAxleChange =
    (boltX + axle.y) * stayY - (boltY - axle.x) * stayX + bracketX * turnY - bracketY * turnX;
  const aboutPivotChange = boltX * stayY - boltY * stayX + bolt.x * turnY - bolt.y * turnX;
  const ratio = aboutPivot / aboutAxle;
  const ratioChange = ((aboutPivotChange - ratio * aboutAxleChange) / aboutAxle) * change.armAngle;
  const { x: pivotX } = pose.pivot;
  return arm - (machine.rearRadius * (ratioChange - (ratio * change.pivot.x) / pivotX)) / pivotX;
}
