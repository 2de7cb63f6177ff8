/** Warnings that a setup raises and the bike does not have as it is set. */
import { pairObstacle } from '../chain/pair-obstacle.ts';
import { hasRuns } from '../parts/drive-kind.ts';
import type { Bike } from '../parts/bike.ts';
import { warningsFor, type Warning } from '../readings/warnings.ts';
import type { RideStateKey } from '../riding/states/all-ride-states.ts';
import type { NoStand } from '../riding/no-stand.ts';
import type { StandingBike } from '../riding/stand-bike.ts';

export type PlanWarning =
  | Warning
  /** A sprocket does not go over the countershaft, or reaches the pivot. */
  | 'sprocketInTheWay'
  /** A spring is coil-bound where the bike rests. */
  | 'coilsClosed';

/** The bike in each state looked at, or why it does not stand there. */
export type InStates = ReadonlyMap<RideStateKey, StandingBike | NoStand>;

/** Where the house judges the trail, and where the springs give no rest. */
export const JUDGED_IN: RideStateKey = 'riderUp';
export const JUDGED_ELSE: RideStateKey = 'toppedOut';

/** The warnings about a bike, in all states in which it stands; by state, since a chain clears its slider in one and not in another. */
export function allWarnings(bike: Bike, inStates: InStates): Map<string, PlanWarning> {
  const found = new Map<string, PlanWarning>();
  const judged = [JUDGED_IN, JUDGED_ELSE].map((state) => inStates.get(state)).find((on) => on?.ok === true);
  for (const [state, on] of inStates) {
    if (!on.ok) continue;
    for (const warning of warningsOn(bike, on, judged ?? on)) found.set(`${warning} ${state}`, warning);
  }
  return found;
}

function warningsOn({ drive }: Bike, on: StandingBike, judged: StandingBike): PlanWarning[] {
  const { equilibrium, machine } = on;
  const obstacle = hasRuns(drive.kind)
    ? pairObstacle(machine, drive.chainPitch, drive.leastFrontTeeth)
    : null;
  const closed = equilibrium?.front.rest === 'coilsClosed' || equilibrium?.rear.rest === 'coilsClosed';
  return [
    ...warningsFor(on, judged),
    ...(obstacle === null ? [] : (['sprocketInTheWay'] as const)),
    ...(closed ? (['coilsClosed'] as const) : []),
  ];
}

/** The first warning of `now` that `before` does not have; null where there is none. */
export function raisedWarning(
  before: ReadonlyMap<string, PlanWarning>,
  now: ReadonlyMap<string, PlanWarning>,
): PlanWarning | null {
  for (const [where, warning] of now) if (!before.has(where)) return warning;
  return null;
}
