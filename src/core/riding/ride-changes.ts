/** What riding does to a bike that sat still: sag, squat as the gas opens, dive on the brakes. */
import { balance, type Equilibrium } from './equilibrium/equilibrium.ts';
import { alone } from './loads.ts';
import type { NoEquilibrium } from '../standing/no-equilibrium.ts';
import { AT_REST, type RideForces } from './equilibrium/ride-forces.ts';
import type { SprungMachine } from '../springs/sprung-machine.ts';
import type { Travel } from '../standing/stance.ts';

/** Travel used from hanging in the air, mm: fork along the legs, rear wheel square to the ground. */
export interface Sag {
  readonly ok: true;
  /** By the bike's own weight. */
  readonly free: Travel;
  /** With the rider, and whatever load the machine carries. */
  readonly rider: Travel;
}

/** Free sag and rider sag at both ends, as they are measured with a tape: from both wheels off the ground. */
export function sag(sprung: SprungMachine): Sag | NoEquilibrium {
  const unloaded = balance(alone(sprung), AT_REST);
  if (!unloaded.ok) return unloaded;
  const carrying = balance(sprung, AT_REST, unloaded.stance.travel);
  if (!carrying.ok) return carrying;
  return { ok: true, free: fromHanging(sprung, unloaded), rider: fromHanging(sprung, carrying) };
}

function fromHanging({ hanging }: SprungMachine, { stance }: Equilibrium): Travel {
  return { front: stance.travel.front - hanging.front, rear: stance.travel.rear - hanging.rear };
}

/** From one balance to another, mm of travel: positive is further in, negative further out. */
export interface RideChange {
  readonly ok: true;
  /** Fork along the legs: positive dives, negative rises. */
  readonly front: number;
  /** Rear wheel: positive squats, negative lifts. */
  readonly rear: number;
  readonly from: Equilibrium;
  readonly to: Equilibrium;
}

/** What the springs do when the forces change from one steady state to another. */
export function rideChange(
  sprung: SprungMachine,
  before: RideForces,
  after: RideForces,
): RideChange | NoEquilibrium {
  const from = balance(sprung, before);
  if (!from.ok) return from;
  const to = balance(sprung, after, from.stance.travel);
  if (!to.ok) return to;
  return changed(from, to);
}

function changed(from: Equilibrium, to: Equilibrium): RideChange {
  return {
    ok: true,
    front: to.stance.travel.front - from.stance.travel.front,
    rear: to.stance.travel.rear - from.stance.travel.rear,
    from,
    to,
  };
}

/** Dive of the front (+) and rise of the rear (−), in mm, from rolling evenly upright to `deceleration` g. */
export function braked(
  sprung: SprungMachine,
  deceleration: number,
  frontShare: number,
  drag: RideForces['drag'] = null,
): RideChange | NoEquilibrium {
  const rolling: RideForces = { ...AT_REST, frontBrakeShare: frontShare, drag };
  return rideChange(sprung, rolling, { ...rolling, acceleration: -deceleration });
}

/** Coasting with the lean of a case: neither driven nor slowed, and no drag. */
function coasting({ lean, frontBrakeShare }: RideForces): RideForces {
  return { ...AT_REST, lean, frontBrakeShare };
}

/**
 * What a closed throttle does against coasting with the same load and lean. Rear above zero drops, below zero rises.
 * `closed` are the forces, or the balance where it is known already.
 */
export function throttleShut(
  sprung: SprungMachine,
  closed: RideForces | Equilibrium,
): RideChange | NoEquilibrium {
  if (!('stance' in closed)) return rideChange(sprung, coasting(closed), closed);
  const from = balance(sprung, coasting(closed.forces), closed.stance.travel);
  return from.ok ? changed(from, closed) : from;
}
