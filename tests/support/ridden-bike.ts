/** The plain bike with links, springs and everything a reading needs, standing in a ride state. */
import type { Bike } from '../../src/core/parts/bike.ts';
import type { Setup } from '../../src/core/adjusters/setup.ts';
import type { Equilibrium } from '../../src/core/riding/equilibrium/equilibrium.ts';
import type { RideStateKey } from '../../src/core/riding/states/all-ride-states.ts';
import type { SprungMachine } from '../../src/core/springs/sprung-machine.ts';
import { standBike, type StandingBike } from '../../src/core/riding/stand-bike.ts';
import type { Travel } from '../../src/core/standing/stance.ts';
import { linkedBike, sprungSetup } from './linked-bike.ts';
import { withFork, withFrame } from './plain-bike.ts';

/** Every figure that a reading can need is known. */
export const wholeBike: Bike = withCrowns(
  withFrame(withFork(linkedBike, { leastHeight: 0, lowerClampDepth: 200 }), {
    touching: { ...linkedBike.frame.touching, footrest: { x: -40, y: -60, halfWidth: 320 } },
  }),
);

function withCrowns(bike: Bike): Bike {
  return {
    ...bike,
    frontWheel: { ...bike.frontWheel, crownRadius: 60 },
    rearWheel: { ...bike.rearWheel, crownRadius: 90 },
  };
}

/** The bike in equilibrium in a ride state that its springs carry. */
export function ridden(
  state: Exclude<RideStateKey, 'toppedOut' | 'travelByHand'>,
  bike: Bike = wholeBike,
  setup: Setup = sprungSetup,
): StandingBike & { readonly equilibrium: Equilibrium; readonly sprung: SprungMachine } {
  const found = standBike(bike, setup, state);
  if (!found.ok) throw new Error(`The bike finds no rest: ${JSON.stringify(found)}`);
  const { equilibrium, sprung } = found;
  if (equilibrium === undefined || sprung === undefined) throw new Error(`${state} has no equilibrium`);
  return { ...found, equilibrium, sprung };
}

/** The bike at a given travel, with springs known but not in equilibrium. */
export function sprungAt(
  travel: Travel,
  bike: Bike = wholeBike,
  setup: Setup = sprungSetup,
): StandingBike & { readonly sprung: SprungMachine } {
  const asSet = { ...setup, frontTravelUsed: travel.front, rearTravelUsed: travel.rear };
  const found = standBike(bike, asSet, 'travelByHand');
  if (!found.ok) throw new Error(`The bike has no pose: ${JSON.stringify(found)}`);
  const { sprung } = found;
  if (sprung === undefined) throw new Error('the springs are not known');
  return { ...found, sprung };
}
