/** The ways of riding in which a bike is read, and the bike at rest in each of them. */
import { balance, type Balance } from './balance.ts';
import { alone } from './loads.ts';
import type { NoBalance } from './no-balance.ts';
import { AT_REST, type Drag, type RideForces } from './ride-forces.ts';
import type { SprungMachine } from './sprung-machine.ts';
import { stance, type Stance, type Travel } from './stance.ts';

/** Acceleration and deceleration in g, both positive; lean from upright in radians. */
export type RideCase =
  | { readonly kind: 'toppedOut' }
  | { readonly kind: 'bikeAlone' }
  | { readonly kind: 'riderUp' }
  | { readonly kind: 'onGas'; readonly acceleration: number; readonly drag: Drag | null }
  | {
      readonly kind: 'onBrakes';
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
  | { readonly kind: 'asDialled'; readonly travel: Travel };

/** The steady forces of a case; null for the two that are no balance. */
export function forcesIn(ride: RideCase): RideForces | null {
  switch (ride.kind) {
    case 'toppedOut':
    case 'asDialled':
      return null;
    case 'bikeAlone':
    case 'riderUp':
      return AT_REST;
    case 'onGas':
      return { ...AT_REST, acceleration: ride.acceleration, drag: ride.drag };
    case 'onBrakes':
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
  readonly balance: Balance | null;
}

/**
 * The bike in a ride case. Topped out it stands with both ends as they hang in the air; as dialled, at the travel
 * given; all others are a balance, the bike alone without rider and load. `near` is where to look first.
 */
export function ridden(sprung: SprungMachine, ride: RideCase, near?: Travel): Ridden | NoBalance {
  const forces = forcesIn(ride);
  if (forces === null) {
    const on = stance(sprung.machine, ride.kind === 'asDialled' ? ride.travel : sprung.hanging);
    return on.ok ? { ok: true, stance: on, balance: null } : on;
  }
  const rest = balance(ride.kind === 'bikeAlone' ? alone(sprung) : sprung, forces, near);
  return rest.ok ? { ok: true, stance: rest.stance, balance: rest } : rest;
}
