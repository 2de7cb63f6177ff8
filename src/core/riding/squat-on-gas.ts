/** What the gas does to the rear of a standing bike. */
import { balance } from './equilibrium/equilibrium.ts';
import type { StandingBike } from './stand-bike.ts';

/**
 * Squat of the rear as the gas opens, mm of rear travel, negative where it lifts: from the balance with the same load,
 * lean and drag at steady speed to the one that the bike stands in. Null where it does not accelerate or comes to no
 * rest at steady speed.
 */
export function squatOnGas({ sprung, equilibrium }: StandingBike): number | null {
  if (sprung === undefined || equilibrium === undefined || !(equilibrium.forces.acceleration > 0))
    return null;
  const steady = balance(sprung, { ...equilibrium.forces, acceleration: 0 }, equilibrium.stance.travel);
  return steady.ok ? equilibrium.stance.travel.rear - steady.stance.travel.rear : null;
}
