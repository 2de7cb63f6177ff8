/** From a bike and its setup to the bike standing in a ride state, in one step. */
import type { Bike } from '../chassis/bike.ts';
import type { NoPose } from '../chassis/no-pose.ts';
import type { Setup } from '../chassis/setup.ts';
import { machine } from './machine.ts';
import { travelIn, type RideState } from './ride-state.ts';
import { stance, type Stance } from './stance.ts';

/** The bike on its wheels in a ride state, or why it has no pose. The screen and the readings command both ask here. */
export function standBike(bike: Bike, setup: Setup, state: RideState): Stance | NoPose {
  const made = machine(bike, setup);
  return made.ok ? stance(made, travelIn(state, setup)) : made;
}
