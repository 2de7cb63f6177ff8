/** How the rear brake's hold changes with the travel used: the exact derivative of its slope. */
import type { NoEquilibrium } from './no-equilibrium.ts';
import { stayHold, type RearBrake } from './rear-brake.ts';
import { changeOfStaySlope } from './stay-slope.ts';
import { changeOfSwingarmSlope, type StanceChange } from './stance-change.ts';
import type { Stance } from './stance.ts';

/**
 * Change of `rearBrakeSlope` per mm of travel used at one end, while the stance changes as given. No answer where the
 * slope itself has none.
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
  return arm + changeOfStaySlope(hold, machine.rearRadius, pose.pivot.x, change);
}
