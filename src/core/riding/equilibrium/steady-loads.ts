/** What steady forces ask of the springs of a bike standing in a given posture. */
import { refuse } from '../../numeric/refusal.ts';
import { STANDARD_GRAVITY } from '../../units/convert.ts';
import type { NoEquilibrium } from '../../standing/no-equilibrium.ts';
import { engineBrakingSlopeOf } from '../../standing/drive-slopes.ts';
import { rearBrakeSlope, type RearBrake } from '../../standing/rear-brake.ts';
import type { RideForces } from './ride-forces.ts';
import type { Stance } from '../../standing/stance.ts';

/** Forces in the bike's own plane, N. */
export interface SteadyLoads {
  readonly ok: true;
  /** Along the direction of travel, g, with the drag that slows the bike on top. */
  readonly acceleration: number;
  /** How many times its weight the bike weighs in its own plane: 1/cos(lean). */
  readonly pressed: number;
  /** Of the ground on the tyres, square to the ground as seen in the bike's plane; negative would be a pull. */
  readonly frontLoad: number;
  readonly rearLoad: number;
  /** Of the ground on the driven wheel, forward; zero while braking. */
  readonly thrust: number;
  /** In the tight run of the chain: the upper one under thrust, the lower one while the engine brakes. */
  readonly chainPull: number;
  /** Of the ground on the driven wheel, backward, by the engine through the drive. */
  readonly engineBrake: number;
  /** Of the ground on each braked wheel, backward, by its brake. */
  readonly frontBrake: number;
  readonly rearBrake: number;
  /** Of a wall on the front wheel, backward at the height of its axle. */
  readonly wallPush: number;
  /** What presses the fork together, along the legs, before its springs. */
  readonly frontPush: number;
  /** What presses the rear together, as a force upward at the axle while the frame is held, before its springs. */
  readonly rearPush: number;
}

/**
 * Wheel loads from the whole bike about its patches; what is left of them for the springs, once the unsprung
 * masses' weight and inertia, the chain and the brakes have had their part. In a lean the weight in the bike's
 * plane is m·g/cos(lean) while acceleration acts as it is. Along the legs, λ from vertical: load·cos λ + braking
 * force·sin λ, less weight and inertia of the unsprung front. What slows the bike at the tyres the engine makes first, as
 * far as it brakes, and the brakes make the rest. A wall holds back all of the thrust that presses the bike against it, at
 * the front axle. Spin of wheels and engine is left out.
 * No answer without mass, or when the rear brake's stay cannot hold.
 */
export function steadyLoads(on: Stance, forces: RideForces, brake: RearBrake): SteadyLoads | NoEquilibrium {
  const { machine, pose, mass } = on;
  if (!(mass > 0)) return refuse('noMass');
  const { engineBraking = 0, slowedByDrag = 0, wallThrust = 0 } = forces;
  const drag = forces.drag === null ? 0 : forces.drag.force;
  const dragHeight = forces.drag === null ? 0 : forces.drag.height;
  const weight = mass * STANDARD_GRAVITY;
  const acceleration = forces.acceleration - (slowedByDrag * drag) / weight;
  const pressed = 1 / Math.cos(forces.lean);
  const frontLoad =
    (weight * (pressed * on.centre.x - acceleration * on.centre.y) -
      drag * dragHeight -
      wallThrust * machine.frontRadius) /
    pose.wheelbase;
  const rearLoad = weight * pressed - frontLoad;
  const forward = weight * acceleration + drag;
  const thrust = Math.max(forward, 0) + wallThrust;
  const slowing = Math.max(-forward, 0);
  const engineBrake = Math.min(weight * engineBraking, slowing);
  const braking = slowing - engineBrake;
  const frontBrake = braking * forces.frontBrakeShare;
  const rearBrake = braking - frontBrake;

  const { downLegs } = machine.front;
  // Cosine and sine of the legs' lean back from vertical, as the bike stands.
  const cosLegs = -pose.sin * downLegs.x - pose.cos * downLegs.y;
  const sinLegs = pose.cos * downLegs.x - pose.sin * downLegs.y;
  const frontWeight = machine.frontUnsprung * STANDARD_GRAVITY;
  const frontPush =
    (frontLoad - frontWeight * pressed) * cosLegs +
    (frontBrake + wallThrust + frontWeight * acceleration) * sinLegs;

  let rearHold = 0;
  if (rearBrake > 0) {
    const slope = rearBrakeSlope(brake, machine, on.arm.angle, pose.pivot);
    if (typeof slope !== 'number') return slope;
    rearHold += rearBrake * slope;
  }
  if (engineBrake > 0) {
    const { swingarm, chain } = engineBrakingSlopeOf(on);
    rearHold += engineBrake * (swingarm + chain);
  }
  const rearWeight = machine.rearUnsprung * STANDARD_GRAVITY;
  const armSlope = (pose.pivot.y - on.rearAxle.y) / pose.pivot.x;
  const armTurn = (machine.armMoment * STANDARD_GRAVITY) / machine.rear.arm;
  const rearPush =
    rearLoad -
    thrust * (on.swingarmSlope + on.chainSlope) +
    rearHold -
    rearWeight * (pressed - acceleration * armSlope) -
    armTurn * (acceleration + pressed * armSlope);
  return {
    ok: true,
    acceleration,
    pressed,
    frontLoad,
    rearLoad,
    thrust,
    chainPull: ((thrust + engineBrake) * machine.rearRadius) / machine.rearSprocketRadius,
    engineBrake,
    frontBrake,
    rearBrake,
    wallPush: wallThrust,
    frontPush,
    rearPush,
  };
}
