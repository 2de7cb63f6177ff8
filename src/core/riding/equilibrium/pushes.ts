/** What presses both ends of a bike together beyond what their springs hold, with its exact derivatives by the travel. */
import type { PushesAt } from '../../numeric/solve-in-box.ts';
import { rearForceAtWheel } from '../../springs/at-the-wheel.ts';
import { STANDARD_GRAVITY } from '../../units/convert.ts';
import type { NoEquilibrium } from '../../standing/no-equilibrium.ts';
import { changeOfEngineBrakingSlope } from '../../standing/drive-slopes.ts';
import { changeOfRearBrakeSlope } from '../../standing/rear-brake-change.ts';
import { springForce, springRate } from '../../springs/spring-law.ts';
import type { SprungMachine } from '../../springs/sprung-machine.ts';
import {
  changeOfChainSlope,
  changeByFront,
  changeByRear,
  changeOfSwingarmSlope,
  type StanceChange,
} from '../../standing/stance-change.ts';
import type { Stance } from '../../standing/stance.ts';
import type { SteadyLoads } from './steady-loads.ts';

/** A bike in a posture, and the loads that steady forces give there. */
export interface LoadedStance {
  readonly sprung: SprungMachine;
  readonly stance: Stance;
  readonly loads: SteadyLoads;
}

/** The pushes in a posture: x is the fork's travel and push along the legs, y those of the rear axle; N and mm. */
export interface Pushes extends PushesAt {
  readonly ok: true;
  readonly of: LoadedStance;
}

/**
 * Front push − fork springs along the legs, and rear push − shock springs at the axle square to the ground, N, with
 * their changes per mm of travel at either end, N/mm. Derivation: `steadyLoads` and the springs' virtual work,
 * differentiated. At a kink, such as where the chain begins to lie on the guide, the changes are those of the posture's
 * own side, of a spring those of pressing further. No answer when the rear brake's stay cannot hold.
 */
export function pushesOn(of: LoadedStance): Pushes | NoEquilibrium {
  const { sprung, stance: on, loads } = of;
  const { x, y } = on.machine.front.downLegs;
  const cosLegs = -on.pose.sin * x - on.pose.cos * y;
  const sinLegs = on.pose.cos * x - on.pose.sin * y;
  const byFront = changeByFront(on);
  const byRear = changeByRear(on);
  const loadByFront = changeOfLoad(of, byFront);
  const loadByRear = changeOfLoad(of, byRear);
  const perTurn = frontPushPerTurn(of, cosLegs, sinLegs);
  const slopeByFront = changeOfSlopes(of, byFront);
  if (typeof slopeByFront !== 'number') return slopeByFront;
  const slopeByRear = changeOfSlopes(of, byRear);
  if (typeof slopeByRear !== 'number') return slopeByRear;
  const held = rearForceAtWheel(sprung, on);
  const heldPerAhead = held / on.pose.pivot.x;
  return {
    ok: true,
    of,
    pushX: loads.frontPush - springForce(sprung.fork, on.travel.front),
    pushY: loads.rearPush - held,
    xPerX: loadByFront * cosLegs + byFront.pitch * perTurn - springRate(sprung.fork, on.travel.front),
    xPerY: loadByRear * cosLegs + byRear.pitch * perTurn,
    yPerX: slopeByFront - loadByFront + heldPerAhead * byFront.pivot.x,
    yPerY: slopeByRear - loadByRear + heldPerAhead * byRear.pivot.x - rearForcePerArm(of) * byRear.armAngle,
  };
}

/**
 * Change of the front load per mm of travel at either end: of the moment of the whole bike about the rear patch, over the
 * wheelbase.
 */
function changeOfLoad({ stance: on, loads }: LoadedStance, change: StanceChange): number {
  const { machine, pose, mass } = on;
  const { frontUnsprung, rearUnsprung, armMoment } = machine;
  const level = (STANDARD_GRAVITY * loads.pressed) / pose.wheelbase;
  const upright = (STANDARD_GRAVITY * loads.acceleration) / pose.wheelbase;
  const carried = mass - frontUnsprung - rearUnsprung;
  // Moments of what is fixed to the frame about the pivot; heights above seat and marks stay square to the ground.
  const ahead = mass * on.centre.x - frontUnsprung * pose.wheelbase - carried * pose.pivot.x;
  let above = mass * on.centre.y - rearUnsprung * machine.rearRadius - frontUnsprung * machine.frontRadius;
  for (const each of machine.carried) above -= each.mass * each.height;
  above -= carried * pose.pivot.y;
  // What the arm carries above its own line turns with it.
  const perTurn =
    armMoment === 0
      ? 0
      : armMoment * (upright * Math.sin(on.swingarmAngle) - level * Math.cos(on.swingarmAngle));
  return (
    perTurn * change.armAngle +
    (-level * above - upright * ahead) * change.pitch +
    level * carried * change.pivot.x +
    -upright * carried * change.pivot.y +
    (level * frontUnsprung - loads.frontLoad / pose.wheelbase) * change.wheelbase
  );
}

/** Change of the front push per radian of pitch while the front load stays: the legs lean further back. */
function frontPushPerTurn({ stance: on, loads }: LoadedStance, cosLegs: number, sinLegs: number): number {
  const weight = on.machine.frontUnsprung * STANDARD_GRAVITY;
  const upward = loads.frontLoad - weight * loads.pressed;
  const backward = loads.frontBrake + loads.wallPush + weight * loads.acceleration;
  return backward * cosLegs - upward * sinLegs;
}

/** Change of the rear push with the slopes along which drive, brake and unsprung mass act. */
function changeOfSlopes(
  { sprung, stance: on, loads }: LoadedStance,
  change: StanceChange,
): number | NoEquilibrium {
  const brakeSlope = loads.rearBrake > 0 ? changeOfRearBrakeSlope(sprung.brake, on, change) : 0;
  if (typeof brakeSlope !== 'number') return brakeSlope;
  const driveSlope =
    loads.thrust > 0 ? changeOfSwingarmSlope(on, change) + changeOfChainSlope(on, change) : 0;
  const engineSlope = loads.engineBrake > 0 ? changeOfEngineBrakingSlope(on, change) : 0;
  const { x: pivotX, y: pivotY } = on.pose.pivot;
  const armSlope = (pivotY - on.rearAxle.y) / pivotX;
  const { rearUnsprung, armMoment, rear } = on.machine;
  const perSlope =
    STANDARD_GRAVITY * (rearUnsprung * loads.acceleration - (armMoment * loads.pressed) / rear.arm);
  return (
    loads.rearBrake * brakeSlope +
    loads.engineBrake * engineSlope -
    loads.thrust * driveSlope +
    (perSlope * (change.pivot.y - armSlope * change.pivot.x)) / pivotX
  );
}

/** Change of the shock springs' force at the rear axle per radian of arm angle, which counts downward. */
function rearForcePerArm({ sprung, stance: on }: LoadedStance): number {
  const { shockStroke, lever, leverSlope } = on.arm;
  const force = springForce(sprung.shock, shockStroke);
  const rate = springRate(sprung.shock, shockStroke);
  return (force * leverSlope - rate * lever * lever) / on.pose.pivot.x;
}
