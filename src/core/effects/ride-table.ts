/** A bike read in all ride states side by side, with the figures that a mechanic compares. */
import type { Bike } from '../parts/bike.ts';
import type { Setup } from '../adjusters/setup.ts';
import { antiSquat } from '../readings/anti-squat.ts';
import type { Absent } from '../readings/absent.ts';
import { groundTrail } from '../readings/trail.ts';
import type { Rest } from '../riding/equilibrium/end-at-rest.ts';
import { machine } from '../standing/machine.ts';
import type { NoStand } from '../riding/no-stand.ts';
import { loadCase, RIDE_STATES, type RideStateKey } from '../riding/states/all-ride-states.ts';
import { sprungMachine } from '../springs/sprung-machine.ts';
import { standRide, type StandingBike } from '../riding/stand-bike.ts';
import type { Travel } from '../standing/stance.ts';
import { degrees } from '../units/convert.ts';

/** The bike in one of the states, or why it does not stand there. */
export interface RideRow {
  readonly state: RideStateKey;
  readonly found: StandingBike | NoStand;
}

/** All states of one bike. `near` gives, for each state, where to look first. */
export function rideTable(
  bike: Bike,
  setup: Setup,
  near: (state: RideStateKey) => Travel | undefined = () => undefined,
): RideRow[] {
  const made = machine(bike, setup);
  if (!made.ok) return RIDE_STATES.map(({ key: state }) => ({ state, found: made }));
  const sprung = sprungMachine(made);
  return RIDE_STATES.map(({ key: state }) => ({
    state,
    found: standRide(made, loadCase(state, setup), near(state), sprung),
  }));
}

/** Metric numbers, as people read them. */
export interface RideFigures {
  readonly frontUsed: number;
  readonly frontLeft: number;
  readonly rearUsed: number;
  readonly rearLeft: number;
  /** How the ends rest; null where the springs do not carry the bike. */
  readonly frontRest: Rest | null;
  readonly rearRest: Rest | null;
  /** N, vertical; null in a state that is no balance, as the readings of the wheel loads have none. */
  readonly frontLoad: number | null;
  readonly rearLoad: number | null;
  /** Per cent of both. */
  readonly frontShare: number | null;
  readonly rake: number;
  readonly trail: number;
  /** Per cent; null where there is none, with the reason beside. */
  readonly antiSquat: number | null;
  readonly noAntiSquat: Absent | null;
}

/** The figures of a standing bike. */
export function rideFigures(on: StandingBike): RideFigures {
  const { equilibrium, sprung, travel, machine: made } = on;
  const most = sprung?.most ?? { front: made.front.travel, rear: made.rear.wheelTravel };
  const loads = wheelLoads(on);
  const squat = antiSquat.read(on);
  return {
    frontUsed: travel.front,
    frontLeft: most.front - travel.front,
    rearUsed: travel.rear,
    rearLeft: most.rear - travel.rear,
    frontRest: equilibrium?.front.rest ?? null,
    rearRest: equilibrium?.rear.rest ?? null,
    frontLoad: loads?.front ?? null,
    rearLoad: loads?.rear ?? null,
    frontShare: loads === null ? null : (100 * loads.front) / (loads.front + loads.rear),
    rake: degrees(on.rake),
    trail: groundTrail(made.frontRadius, on.rake, on.offset),
    antiSquat: typeof squat === 'number' ? squat : null,
    noAntiSquat: typeof squat === 'number' ? null : squat,
  };
}

/** Of the ground on the tyres, N; null where the springs do not carry the bike: hanging wheels press on nothing. */
function wheelLoads({ equilibrium }: StandingBike): { front: number; rear: number } | null {
  return equilibrium === undefined
    ? null
    : { front: equilibrium.front.wheelLoad, rear: equilibrium.rear.wheelLoad };
}
