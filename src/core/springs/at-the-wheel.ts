/** Springs as the wheels feel them in a stance: motion ratio, force and rates at the wheel. */
import { suspensionAt } from '../linkage/suspension.ts';
import type { NoBalance } from './no-balance.ts';
import type { SprungMachine } from './sprung-machine.ts';
import { springForce, springRate } from './spring-law.ts';
import type { Stance } from './stance.ts';

/** Half the travel over which the rear wheel's rate is measured, mm: truncation and rounding are both near 1e-8. */
const RATE_STEP = 0.02;

/** Shock stroke per rise of the rear axle, square to the ground as the bike stands; zero at a dead point. */
export function rearMotionRatio({ arm, pose }: Stance): number {
  return arm.lever / pose.originX;
}

/** Force of all shocks' springs at the rear axle, N, square to the ground as the bike stands: by virtual work. */
export function rearForceAtWheel({ shock }: SprungMachine, on: Stance): number {
  return springForce(shock, on.arm.shockStroke) * rearMotionRatio(on);
}

/** Rate of both legs at the front wheel, N/mm: vertical force per rise of the axle, the frame held as it stands. */
export function frontWheelRate({ fork }: SprungMachine, { machine, pose, travel }: Stance): number {
  const cosLeg = Math.cos(machine.front.legLean + pose.pitch);
  return springRate(fork, travel.front) / (cosLeg * cosLeg);
}

/**
 * Rate at the rear wheel, N/mm: change of the force at the axle square to the ground over the axle's rise square
 * to the ground, the frame held at `pitch` radians nose up. For small moves spring rate × motion ratio², plus the
 * spring's force times the change of the motion ratio, which the difference includes by itself. Taken over a few
 * hundredths of a mm; next to an end of the travel from the inside. No answer where the linkage has none.
 */
export function rearWheelRate(sprung: SprungMachine, travelUsed: number, pitch: number): number | NoBalance {
  const { machine, shock, most } = sprung;
  const step = Math.min(RATE_STEP, most.rear / 2);
  const middle = Math.min(Math.max(travelUsed, step), most.rear - step);
  const low = suspensionAt(machine.rear, middle - step);
  const high = suspensionAt(machine.rear, middle + step);
  if (!low.ok) return low;
  if (!high.ok) return high;
  const force = (at: typeof low): number =>
    (springForce(shock, at.shockStroke) * at.lever) / (machine.rear.arm * Math.cos(at.angle + pitch));
  const rise = machine.rear.arm * (Math.sin(low.angle + pitch) - Math.sin(high.angle + pitch));
  return (force(high) - force(low)) / rise;
}
