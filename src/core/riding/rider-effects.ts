/** What the rider's hands do to the bike in mm and g: gas opened in the corner, brakes, and when a wheel lifts. */
import type { Setup } from '../adjusters/setup.ts';
import { accelerating } from './states/accelerating-state.ts';
import { braking } from './states/braking-state.ts';
import { midCorner } from './states/mid-corner-state.ts';
import { frontLiftLimit, rearLiftLimit, type LiftLimit } from './equilibrium/lift-limits.ts';
import type { NoEquilibrium } from '../standing/no-equilibrium.ts';
import { throttleClosed } from './states/throttle-closed-state.ts';
import { braked, rideChange, sag, throttleShut, type RideChange, type Sag } from './ride-changes.ts';
import type { SprungMachine } from '../springs/sprung-machine.ts';

/** Each part has its own reason when it has no answer: where a wheel lifts, the rest still has its figures. */
export interface RiderEffects {
  readonly sag: Sag | NoEquilibrium;
  /** From mid-corner, at its lean, to the acceleration set for the state “Accelerating”. */
  readonly gasOpened: RideChange | NoEquilibrium;
  /** From rolling evenly upright to the deceleration set for the state “Braking”. */
  readonly braked: RideChange | NoEquilibrium;
  /** From coasting, neither driven nor slowed, at the lean set for “Throttle closed”, to that state. */
  readonly throttleClosed: RideChange | NoEquilibrium;
  /** Upright, g. */
  readonly frontLifts: LiftLimit | NoEquilibrium;
  readonly rearLifts: LiftLimit | NoEquilibrium;
}

/** All of them, by the riding adjusters of a setup. */
export function riderEffects(sprung: SprungMachine, setup: Setup): RiderEffects {
  const corner = midCorner.loadCase(setup).forces;
  const gas = accelerating.loadCase(setup).forces;
  const brakes = braking.loadCase(setup).forces;
  return {
    sag: sag(sprung),
    gasOpened: rideChange(sprung, corner, { ...corner, acceleration: setup.acceleration }),
    braked: braked(sprung, setup.braking, brakes.frontBrakeShare, brakes.drag),
    throttleClosed: throttleShut(sprung, throttleClosed.loadCase(setup).forces),
    frontLifts: frontLiftLimit(sprung, gas),
    rearLifts: rearLiftLimit(sprung, brakes),
  };
}
