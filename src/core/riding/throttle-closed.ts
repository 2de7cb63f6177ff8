/** Whether a standing bike has its throttle closed, and what that does to its rear. */
import { throttleShut } from './ride-changes.ts';
import type { StandingBike } from './stand-bike.ts';

/** Whether the engine brakes the bike through its drive in the balance that it stands in. */
export function throttleIsClosed({ equilibrium }: StandingBike): boolean {
  return (equilibrium?.forces.engineBraking ?? 0) > 0;
}

/**
 * Rise of the rear against coasting with the same load and lean, mm of rear travel, negative where it drops: from the
 * two balances. Null where the throttle is open or the coasting bike comes to no rest.
 */
export function closedThrottleRise({ sprung, equilibrium }: StandingBike): number | null {
  if (sprung === undefined || equilibrium === undefined || !((equilibrium.forces.engineBraking ?? 0) > 0))
    return null;
  const change = throttleShut(sprung, equilibrium);
  return change.ok ? change.from.stance.travel.rear - change.to.stance.travel.rear : null;
}
