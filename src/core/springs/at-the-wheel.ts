/** Springs as the wheels feel them in a stance: motion ratio, force and rates at the wheel. */
import { motionRatio, motionRatioSlope, wheelRate } from '../linkage/leverage.ts';
import { suspensionAt, type SuspensionAt } from '../linkage/suspension.ts';
import type { NoEquilibrium } from '../standing/no-equilibrium.ts';
import type { SprungMachine } from './sprung-machine.ts';
import { springForce, springRate } from './spring-law.ts';
import type { Stance } from '../standing/stance.ts';

/** So far inside its ends the travel is looked at, mm: a table goes on straight beyond them, and rounding may be beyond. */
const INSIDE = 1e-6;

/** Shock stroke per rise of the rear axle, square to the ground as the bike stands; zero at a dead point. */
export function rearMotionRatio({ arm, pose }: Stance): number {
  return arm.lever / pose.pivot.x;
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
 * to the ground, the frame held at `pitch` radians nose up. Spring rate × motion ratio², plus the spring's force
 * times the change of the motion ratio; at a kink of the spring's law that of pressing further, at an end of the
 * travel that of its inside. `there` is the suspension at that travel, where it was worked out before. No answer where the
 * linkage has none.
 */
export function rearWheelRate(
  sprung: SprungMachine,
  travelUsed: number,
  pitch: number,
  there: SuspensionAt | null = null,
): number | NoEquilibrium {
  const { machine, shock, most } = sprung;
  const within = Math.min(Math.max(travelUsed, INSIDE), most.rear - INSIDE);
  const at = there !== null && within === travelUsed ? there : suspensionAt(machine.rear, within);
  if (!at.ok) return at;
  const { arm } = machine.rear;
  const angle = at.angle + pitch;
  return wheelRate(
    springRate(shock, at.shockStroke),
    springForce(shock, at.shockStroke),
    motionRatio(at, arm, angle),
    motionRatioSlope(at, arm, angle),
  );
}
