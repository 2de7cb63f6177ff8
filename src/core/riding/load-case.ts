/** The ways of riding in which a bike is read, and the bike at rest in each of them. */
import { balance, type Equilibrium } from './equilibrium.ts';
import { alone } from './loads.ts';
import type { NoEquilibrium } from '../standing/no-equilibrium.ts';
import { AT_REST, type Drag, type RideForces } from './ride-forces.ts';
import type { SprungMachine } from '../springs/sprung-machine.ts';
import { stance, type Stance, type Travel } from '../standing/stance.ts';

/** Acceleration and deceleration in g, both positive; lean from upright in radians. */
export type LoadCase =
  | { readonly kind: 'toppedOut' }
  | { readonly kind: 'noRider' }
  | { readonly kind: 'riderUp' }
  | { readonly kind: 'accelerating'; readonly acceleration: number; readonly drag: Drag | null }
  | {
      readonly kind: 'braking';
      readonly deceleration: number;
      readonly frontShare: number;
      readonly drag: Drag | null;
    }
  | {
      readonly kind: 'midCorner';
      readonly lean: number;
      /** Along the direction of travel: positive on the gas, negative on the brakes. */
      readonly acceleration: number;
      readonly frontShare: number;
      readonly drag: Drag | null;
    }
  | { readonly kind: 'travelByHand'; readonly travel: Travel };

/** The steady forces of a case; null for the two that are no balance. */
export function forcesIn(ride: LoadCase): RideForces | null {
  switch (ride.kind) {
    case 'toppedOut':
    case 'travelByHand':
      return null;
    case 'noRider':
    case 'riderUp':
      return AT_REST;
    case 'accelerating':
      return { ...AT_REST, acceleration: ride.acceleration, drag: ride.drag };
    case 'braking':
      return {
        acceleration: -ride.deceleration,
        lean: 0,
        frontBrakeShare: ride.frontShare,
        drag: ride.drag,
      };
    case 'midCorner':
      return {
        acceleration: ride.acceleration,
        lean: ride.lean,
        frontBrakeShare: ride.frontShare,
        drag: ride.drag,
      };
  }
}

/** A bike in a ride case: its stance, and the balance where the case is one. */
export interface Ridden {
  readonly ok: true;
  readonly stance: Stance;
  readonly balance: Equilibrium | null;
}

/**
 * The bike in a ride case. Topped out it stands with both ends as they hang in the air; travel set by hand, at the travel
 * given; all others are a balance, the bike alone without rider and load. `near` is where to look first.
 */
export function ridden(sprung: SprungMachine, ride: LoadCase, near?: Travel): Ridden | NoEquilibrium {
  const forces = forcesIn(ride);
  if (forces === null) {
    const on = stance(sprung.machine, ride.kind === 'travelByHand' ? ride.travel : sprung.hanging);
    return on.ok ? { ok: true, stance: on, balance: null } : on;
  }
  const rest = balance(ride.kind === 'noRider' ? alone(sprung) : sprung, forces, near);
  return rest.ok ? { ok: true, stance: rest.stance, balance: rest } : rest;
}
