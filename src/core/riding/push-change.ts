/** How the pushes on both ends of a bike change with the travel used: the exact derivatives of its balance. */
import { STANDARD_GRAVITY } from '../units/convert.ts';
import type { NoEquilibrium } from '../standing/no-equilibrium.ts';
import { changeOfRearBrakeSlope } from '../standing/rear-brake-change.ts';
import type { RideForces } from './ride-forces.ts';
import { springForce, springRate } from '../springs/spring-law.ts';
import type { SprungMachine } from '../springs/sprung-machine.ts';
import { changeOfChainSlope, changeOfStance } from '../standing/stance-change.ts';
import type { Stance } from '../standing/stance.ts';
import type { SteadyLoads } from './steady-loads.ts';

/** Changes of what presses the ends together less what their springs hold, N per mm of travel used at one end. */
export interface PushChange {
  readonly ok: true;
  readonly front: number;
  readonly rear: number;
}

/**
 * Change of both pushes per mm of travel used at one end, N/mm: of front push − fork springs along the legs, and of
 * rear push − shock springs at the axle, square to the ground. `loads` are those of `on` under `forces`. Derivation:
 * `steadyLoads` and the springs' virtual work, differentiated. At a kink of a spring's law that of pressing further.
 * No answer when the rear brake's stay cannot hold.
 */
export function changeOfPushes(
  sprung: SprungMachine,
  on: Stance,
  loads: SteadyLoads,
  forces: RideForces,
  end: 'front' | 'rear',
): PushChange | NoEquilibrium {
  const change = changeOfStance(on, end);
  const { machine, pose, arm } = on;
  const { originX, originY, wheelbase } = pose;
  const { acceleration } = forces;
  const pressed = 1 / Math.cos(forces.lean);
  const weight = on.mass * STANDARD_GRAVITY;
  const frontLoad =
    (weight * (pressed * change.centreX - acceleration * change.centreY) -
      loads.frontLoad * change.wheelbase) /
    wheelbase;

  const { x, y } = machine.front.downLegs;
  const cosLean = -pose.sin * x - pose.cos * y;
  const sinLean = pose.cos * x - pose.sin * y;
  const frontWeight = machine.frontUnsprung * STANDARD_GRAVITY;
  const upward = loads.frontLoad - frontWeight * pressed;
  const backward = loads.frontBrake + frontWeight * acceleration;
  const frontPush = frontLoad * cosLean + change.pitch * (backward * cosLean - upward * sinLean);

  const driven =
    loads.thrust > 0 ? loads.thrust * (change.swingarmSlope + changeOfChainSlope(on, change)) : 0;
  let braked = 0;
  if (loads.rearBrake > 0) {
    const slope = changeOfRearBrakeSlope(sprung.brake, on, change);
    if (typeof slope !== 'number') return slope;
    braked = loads.rearBrake * slope;
  }
  const armSlope = (originY - on.rearAxleY) / originX;
  const armSlopeChange = (change.originY - armSlope * change.originX) / originX;
  const rearWeight = machine.rearUnsprung * STANDARD_GRAVITY;
  const rearPush = braked - frontLoad - driven + rearWeight * acceleration * armSlopeChange;

  const force = springForce(sprung.shock, arm.shockStroke);
  const rate = springRate(sprung.shock, arm.shockStroke);
  // The shock is pressed in as the arm swings up, against which its angle counts.
  const held =
    ((force * arm.leverSlope - rate * arm.lever * arm.lever) * change.armAngle -
      (force * arm.lever * change.originX) / originX) /
    originX;
  const forkRate = end === 'front' ? springRate(sprung.fork, on.travel.front) : 0;
  return { ok: true, front: frontPush - forkRate, rear: rearPush - held };
}
