/** A bike on its springs in a load case: its stance, and the equilibrium where the springs carry it. */
import type { SprungMachine } from '../springs/sprung-machine.ts';
import type { NoLinkage } from '../linkage/no-linkage.ts';
import type { NoEquilibrium } from '../standing/no-equilibrium.ts';
import { stance, type Stance, type Travel } from '../standing/stance.ts';
import { balance, type Equilibrium } from './equilibrium/equilibrium.ts';
import type { LoadCase } from './states/load-case.ts';
import { alone } from './loads.ts';

export interface StoodSprung {
  readonly ok: true;
  readonly stance: Stance;
  /** Null where the springs do not carry the bike. */
  readonly equilibrium: Equilibrium | null;
}

/**
 * The bike in a load case: with both ends as they hang in the air, at the travel given, or in equilibrium with or
 * without rider and load. `near` is where to look first. No answer, with the reason, when it does not stand.
 */
export function standSprung(
  sprung: SprungMachine,
  ride: LoadCase,
  near?: Travel,
): StoodSprung | NoEquilibrium {
  if (ride.kind !== 'equilibrium') {
    const on = ride.kind === 'travel' ? stance(sprung.machine, ride.travel) : hung(sprung);
    return on.ok ? { ok: true, stance: on, equilibrium: null } : on;
  }
  const rest = balance(ride.carries ? sprung : alone(sprung), ride.forces, near);
  return rest.ok ? { ok: true, stance: rest.stance, equilibrium: rest } : rest;
}

/** With both wheels in the air; where nothing pulls an end in, that is the stance at full extension. */
function hung({ machine, hanging, toppedOut }: SprungMachine): Stance | NoLinkage {
  const isExtended = hanging.front === 0 && hanging.rear === 0 && toppedOut.machine === machine;
  return isExtended ? toppedOut : stance(machine, hanging);
}
