/** What steady forces ask of the springs of a bike standing in a given posture. */
import { refuse } from '../numeric/refusal.ts';
import { STANDARD_GRAVITY } from '../units/convert.ts';
import type { NoEquilibrium } from '../standing/no-equilibrium.ts';
import { rearBrakeSlope, type RearBrake } from '../standing/rear-brake.ts';
import type { RideForces } from './ride-forces.ts';
import type { Stance } from '../standing/stance.ts';

/** Forces in the bike's own plane, N. */
export interface SteadyLoads {
  readonly ok: true;
  /** Of the ground on the tyres, square to the ground as seen in the bike's plane; negative would be a pull. */
  readonly frontLoad: number;
  readonly rearLoad: number;
  /** Of the ground on the driven wheel, forward; zero while braking. */
  readonly thrust: number;
  /** In the tight run of the chain. */
  readonly chainPull: number;
  /** Of the ground on each braked wheel, backward. */
  readonly frontBrake: number;
  readonly rearBrake: number;
  /** What presses the fork together, along the legs, before its springs. */
  readonly frontPush: number;
  /** What presses the rear together, as a force upward at the axle while the frame is held, before its springs. */
  readonly rearPush: number;
}

/**
 * Wheel loads from the whole bike about its patches; what is left of them for the springs, once the unsprung
 * masses' weight and inertia, the chain and the brakes have had their part. In a lean the weight in the bike's
 * plane is m·g/cos(lean) while acceleration acts as it is. Along the legs, λ from vertical: load·cos λ + braking
 * force·sin λ, less weight and inertia of the unsprung front. Wheels' spin is left out.
 * No answer without mass, or when the rear brake's stay cannot hold.
 */
export function steadyLoads(on: Stance, forces: RideForces, brake: RearBrake): SteadyLoads | NoEquilibrium {
  const { machine, pose, mass } = on;
  if (!(mass > 0)) return refuse('noMass');
  const { acceleration } = forces;
  const drag = forces.drag === null ? 0 : forces.drag.force;
  const dragHeight = forces.drag === null ? 0 : forces.drag.height;
  const weight = mass * STANDARD_GRAVITY;
  const pressed = 1 / Math.cos(forces.lean);
  const frontLoad =
    (weight * (pressed * on.centre.x - acceleration * on.centre.y) - drag * dragHeight) / pose.wheelbase;
  const rearLoad = weight * pressed - frontLoad;
  const forward = weight * acceleration + drag;
  const thrust = Math.max(forward, 0);
  const braking = Math.max(-forward, 0);
  const frontBrake = braking * forces.frontBrakeShare;
  const rearBrake = braking - frontBrake;

  const legLean = machine.front.legLean + pose.pitch;
  const frontWeight = machine.frontUnsprung * STANDARD_GRAVITY;
  const frontPush =
    (frontLoad - frontWeight * pressed) * Math.cos(legLean) +
    (frontBrake + frontWeight * acceleration) * Math.sin(legLean);

  let rearHold = 0;
  if (rearBrake > 0) {
    const slope = rearBrakeSlope(brake, machine, on.arm.angle, pose.pivot);
    if (typeof slope !== 'number') return slope;
    rearHold = rearBrake * slope;
  }
  const rearWeight = machine.rearUnsprung * STANDARD_GRAVITY;
  const armSlope = (pose.pivot.y - on.rearAxle.y) / pose.pivot.x;
  const rearPush =
    rearLoad -
    thrust * (on.swingarmSlope + on.chainSlope) +
    rearHold -
    rearWeight * (pressed - acceleration * armSlope);
  return {
    ok: true,
    frontLoad,
    rearLoad,
    thrust,
    chainPull: (thrust * machine.rearRadius) / machine.rearSprocketRadius,
    frontBrake,
    rearBrake,
    frontPush,
    rearPush,
  };
}
