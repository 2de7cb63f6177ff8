/** What the rider's hands do to the bike in mm and g: gas opened in the corner, brakes, and when a wheel lifts. */
import type { Setup } from '../chassis/setup.ts';
import { frontLiftLimit, rearLiftLimit, type LiftLimit } from './lift-limits.ts';
import type { NoBalance } from './no-balance.ts';
import { braked, rideChange, sag, type RideChange, type Sag } from './ride-changes.ts';
import { forcesIn } from './ride-case.ts';
import { AT_REST, type RideForces } from './ride-forces.ts';
import { rideCase } from './ride-state.ts';
import type { SprungMachine } from './sprung-machine.ts';

/** Each part has its own reason when it has no answer: a wheel that lifts spoils no sag. */
export interface RiderEffects {
  readonly sag: Sag | NoBalance;
  /** From mid-corner, at its lean, to the gas dial's acceleration. */
  readonly gasOpened: RideChange | NoBalance;
  /** From rolling evenly upright to the brake dial's deceleration. */
  readonly braked: RideChange | NoBalance;
  /** Upright, g. */
  readonly frontLifts: LiftLimit | NoBalance;
  readonly rearLifts: LiftLimit | NoBalance;
}

/** All of them, by the riding dials of a setup. */
export function riderEffects(sprung: SprungMachine, setup: Setup): RiderEffects {
  const corner = forces('midCorner', setup);
  const gas = forces('onGas', setup);
  const brakes = forces('onBrakes', setup);
  return {
    sag: sag(sprung),
    gasOpened: rideChange(sprung, corner, { ...corner, acceleration: setup.gas }),
    braked: braked(sprung, setup.brake, brakes.frontBrakeShare, brakes.drag),
    frontLifts: frontLiftLimit(sprung, gas),
    rearLifts: rearLiftLimit(sprung, brakes),
  };
}

function forces(state: 'midCorner' | 'onGas' | 'onBrakes', setup: Setup): RideForces {
  return forcesIn(rideCase(state, setup)) ?? AT_REST;
}
