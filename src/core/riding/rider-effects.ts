/** What the rider's hands do to the bike in mm and g: gas opened in the corner, brakes, and when a wheel lifts. */
import type { Setup } from '../adjusters/setup.ts';
import { frontLiftLimit, rearLiftLimit, type LiftLimit } from './lift-limits.ts';
import type { NoEquilibrium } from '../standing/no-equilibrium.ts';
import { braked, rideChange, sag, type RideChange, type Sag } from './ride-changes.ts';
import { forcesIn } from './load-case.ts';
import { AT_REST, type RideForces } from './ride-forces.ts';
import { loadCase } from './ride-state.ts';
import type { SprungMachine } from '../springs/sprung-machine.ts';

/** Each part has its own reason when it has no answer: a wheel that lifts spoils no sag. */
export interface RiderEffects {
  readonly sag: Sag | NoEquilibrium;
  /** From mid-corner, at its lean, to the gas adjuster's acceleration. */
  readonly gasOpened: RideChange | NoEquilibrium;
  /** From rolling evenly upright to the brake adjuster's deceleration. */
  readonly braked: RideChange | NoEquilibrium;
  /** Upright, g. */
  readonly frontLifts: LiftLimit | NoEquilibrium;
  readonly rearLifts: LiftLimit | NoEquilibrium;
}

/** All of them, by the riding adjusters of a setup. */
export function riderEffects(sprung: SprungMachine, setup: Setup): RiderEffects {
  const corner = forces('midCorner', setup);
  const gas = forces('accelerating', setup);
  const brakes = forces('braking', setup);
  return {
    sag: sag(sprung),
    gasOpened: rideChange(sprung, corner, { ...corner, acceleration: setup.gas }),
    braked: braked(sprung, setup.brake, brakes.frontBrakeShare, brakes.drag),
    frontLifts: frontLiftLimit(sprung, gas),
    rearLifts: rearLiftLimit(sprung, brakes),
  };
}

function forces(state: 'midCorner' | 'accelerating' | 'braking', setup: Setup): RideForces {
  return forcesIn(loadCase(state, setup)) ?? AT_REST;
}
