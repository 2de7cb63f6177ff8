/** How the pushes on both ends of a bike change with the travel used: the exact derivatives of its balance. */
import { STANDARD_GRAVITY } from '../units/convert.ts';
import type { NoEquilibrium } from '../standing/no-equilibrium.ts';
import { changeOfRearBrakeSlope } from '../standing/rear-brake-change.ts';
import type { RideForces } from './ride-forces.ts';
import { springForce, springRate } from '../springs/spring-law.ts';
import type { SprungMachine } from '../springs/sprung-machine.ts';
import { changeOfChainSlope, changeOfStance, type StanceChange } from '../standing/stance-change.ts';
import type { Stance } from '../standing/stance.ts';
import type { SteadyLoads } from './steady-loads.ts';

/** A bike in a posture under steady forces, and the loads that they give there. */
export interface LoadedStance {
  readonly sprung: SprungMachine;
  readonly forces: RideForces;
  readonly stance: Stance;
  readonly loads: SteadyLoads;
}

/** Changes at either end per mm of travel used at one of them, N/mm. */
export interface PushChange {
  readonly ok: true;
  readonly front: number;
  readonly rear: number;
}

/**
 * Change of both pushes per mm of travel used at one end, N/mm: of front push − fork springs along the legs, and of
 * rear push − shock springs at the axle, square to the ground. Derivation: `steadyLoads` and the springs' virtual work,
 * differentiated. At a kink of a spring's law that of pressing further. No answer when the rear brake's stay cannot hold.
 */
export function changeOfPushes(of: LoadedStance, end: 'front' | 'rear'): PushChange | NoEquilibrium {
  const change = changeOfStance(of.stance, end);
  const loads = changeOfLoads(of, change);
  if (!loads.ok) return loads;
  const { fork } = of.sprung;
  const forkForce = end === 'front' ? springRate(fork, of.stance.travel.front) : 0;
  return { ok: true, front: loads.front - forkForce, rear: loads.rear - changeOfRearForce(of, change) };
}

/** Change of front and rear push of `steadyLoads`. */
function changeOfLoads(
  { sprung, forces, stance: on, loads }: LoadedStance,
  change: StanceChange,
): PushChange | NoEquilibrium {
  const { machine, pose } = on;
  const { acceleration } = forces;
  const pressed = 1 / Math.cos(forces.lean);
  const weight = on.mass * STANDARD_GRAVITY;
  const moment = weight * (pressed * change.centre.x - acceleration * change.centre.y);
  const frontLoad = (moment - loads.frontLoad * change.wheelbase) / pose.wheelbase;

  const { x, y } = machine.front.downLegs;
  const cosLean = -pose.sin * x - pose.cos * y;
  const sinLean = pose.cos * x - pose.sin * y;
  const frontWeight = machine.frontUnsprung * STANDARD_GRAVITY;
  const upward = loads.frontLoad - frontWeight * pressed;
  const backward = loads.frontBrake + frontWeight * acceleration;

  const driven =
    loads.thrust > 0 ? loads.thrust * (change.swingarmSlope + changeOfChainSlope(on, change)) : 0;
  const brakeSlope = loads.rearBrake > 0 ? changeOfRearBrakeSlope(sprung.brake, on, change) : 0;
  if (typeof brakeSlope !== 'number') return brakeSlope;
  const armSlope = (pose.pivot.y - on.rearAxle.y) / pose.pivot.x;
  const armSlopeChange = (change.pivot.y - armSlope * change.pivot.x) / pose.pivot.x;
  const rearInertia = machine.rearUnsprung * STANDARD_GRAVITY * acceleration;
  return {
    ok: true,
    front: frontLoad * cosLean + change.pitch * (backward * cosLean - upward * sinLean),
    rear: loads.rearBrake * brakeSlope - frontLoad - driven + rearInertia * armSlopeChange,
  };
}

/** Change of the shock springs' force at the rear axle. */
function changeOfRearForce({ sprung, stance: on }: LoadedStance, change: StanceChange): number {
  const { shockStroke, lever, leverSlope } = on.arm;
  const { x: pivotX } = on.pose.pivot;
  const force = springForce(sprung.shock, shockStroke);
  const rate = springRate(sprung.shock, shockStroke);
  // The shock is pressed in as the arm swings up, against which its angle counts.
  const perArm = force * leverSlope - rate * lever * lever;
  return (perArm * change.armAngle - (force * lever * change.pivot.x) / pivotX) / pivotX;
}
