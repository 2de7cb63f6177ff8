/** A bike stood in a ride case as everywhere else, only quicker: a search for a setup does so millions of times. */
import type { Equilibrium } from '../riding/equilibrium/equilibrium.ts';
import type { NoStand } from '../riding/no-stand.ts';
import { standRide, type StandingBike } from '../riding/stand-bike.ts';
import { standSprung } from '../riding/stand-sprung.ts';
import type { LoadCase } from '../riding/states/load-case.ts';
import type { SprungMachine } from '../springs/sprung-machine.ts';
import type { NoEquilibrium } from '../standing/no-equilibrium.ts';
import type { Machine } from '../standing/machine.ts';
import type { Stance } from '../standing/stance.ts';

/** What `standRide` gives for a machine with its springs put in. */
export function standQuickly(
  machine: Machine,
  ride: LoadCase,
  sprung: SprungMachine | NoEquilibrium,
): StandingBike | NoStand {
  if (!sprung.ok || ride.kind !== 'equilibrium') return standRide(machine, ride, undefined, sprung);
  const found = standSprung(sprung, ride);
  if (!found.ok) return found;
  const { stance, equilibrium } = found;
  return equilibrium === null ? { sprung, ...stance } : balanced(stance, sprung, equilibrium);
}

/** A stance with what the springs say beside it. Field by field: a spread of so many takes as long as the balance itself. */
function balanced(on: Stance, sprung: SprungMachine, equilibrium: Equilibrium): StandingBike {
  return {
    sprung,
    equilibrium,
    ok: true,
    machine: on.machine,
    travel: on.travel,
    pose: on.pose,
    arm: on.arm,
    rake: on.rake,
    offset: on.offset,
    rearAxle: on.rearAxle,
    frontAxle: on.frontAxle,
    countershaft: on.countershaft,
    swingarmAngle: on.swingarmAngle,
    upperRunLever: on.upperRunLever,
    pullLever: on.pullLever,
    torqueHold: on.torqueHold,
    swingarmSlope: on.swingarmSlope,
    chainSlope: on.chainSlope,
    mass: on.mass,
    centre: on.centre,
  };
}
