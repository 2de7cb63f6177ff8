/** From a bike and its setup to the bike standing in a ride state, in one step. */
import type { Bike } from '../parts/bike.ts';
import type { Setup } from '../adjusters/setup.ts';
import type { Equilibrium } from './equilibrium/equilibrium.ts';
import { machine, type Machine } from '../standing/machine.ts';
import type { NoEquilibrium } from '../standing/no-equilibrium.ts';
import type { NoStand } from './no-stand.ts';
import { loadCase, type RideStateKey } from './states/all-ride-states.ts';
import type { LoadCase } from './states/load-case.ts';
import { standSprung } from './stand-sprung.ts';
import { sprungMachine, type SprungMachine } from '../springs/sprung-machine.ts';
import { stance, type Stance, type Travel } from '../standing/stance.ts';

/** A bike on its wheels, with what its springs say where they are known. */
export interface StandingBike extends Stance {
  /** Left out while spring rates are not known, or the springs are impossible. */
  readonly sprung?: SprungMachine;
  /** Left out where the springs do not carry the bike, as when it is topped out. */
  readonly equilibrium?: Equilibrium;
}

/**
 * The bike on its wheels in a ride state, or why it does not stand. The screen and the readings command both ask here.
 * `near` is a travel near which to look first, such as that of the state a moment ago.
 */
export function standBike(
  bike: Bike,
  setup: Setup,
  state: RideStateKey,
  near?: Travel,
): StandingBike | NoStand {
  const made = machine(bike, setup);
  return made.ok ? standMachine(made, setup, state, near) : made;
}

/** The same of a machine that is already made from the setup. */
export function standMachine(
  made: Machine,
  setup: Setup,
  state: RideStateKey,
  near?: Travel,
): StandingBike | NoStand {
  return standRide(made, loadCase(state, setup), near);
}

/**
 * A machine on its wheels in any ride case, such as one between two states. `sprung` spares putting the springs in
 * anew when the same machine stands in several cases.
 */
export function standRide(
  made: Machine,
  ride: LoadCase,
  near?: Travel,
  sprung: SprungMachine | NoEquilibrium = sprungMachine(made),
): StandingBike | NoStand {
  if (!sprung.ok) return withoutSprings(made, ride, sprung);
  const found = standSprung(sprung, ride, near);
  if (!found.ok) return found;
  const { stance: on, equilibrium } = found;
  // The many numbers of a stance come last: what is added to a copy of them costs more than the balance itself.
  return equilibrium === null ? { sprung, ...on } : { sprung, equilibrium, ...on };
}

/** Only the stance of standRide, for many machines at once whose springs need not be reported. */
export function stanceInRide(made: Machine, ride: LoadCase, near?: Travel): Stance | NoStand {
  // A travel that is given needs no springs.
  if (ride.kind === 'travel') return stance(made, ride.travel);
  const sprung = sprungMachine(made);
  if (!sprung.ok) return withoutSprings(made, ride, sprung);
  const found = standSprung(sprung, ride, near);
  return found.ok ? found.stance : found;
}

/** Without springs the bike still hangs on its stops, and stands where its travel is set. */
function withoutSprings(made: Machine, ride: LoadCase, why: NoEquilibrium): Stance | NoStand {
  if (ride.kind === 'equilibrium') return why;
  return stance(made, ride.kind === 'travel' ? ride.travel : { front: 0, rear: 0 });
}
