/** Holds one combination of adjusters against the targets and the warnings of the house. */
import type { Setup } from '../adjusters/setup.ts';
import { metricReading } from '../readings/metric-reading.ts';
import { loadCase, RIDE_STATES, rideStateOf, type RideStateKey } from '../riding/states/all-ride-states.ts';
import type { StandingBike } from '../riding/stand-bike.ts';
import type { NoStand } from '../riding/no-stand.ts';
import { sprungMachine } from '../springs/sprung-machine.ts';
import type { Prepared, PreparedTarget } from './prepared.ts';
import { standQuickly } from './stand-quickly.ts';
import { keptLaws, keptMachine } from './kept-parts.ts';
import { allWarnings, JUDGED_ELSE, JUDGED_IN, raisedWarning, type PlanWarning } from './raised-warnings.ts';

/** What stops a combination first; a target by its place in the list. */
export type Stop =
  | { readonly by: 'noStand'; readonly why: NoStand }
  | { readonly by: 'target'; readonly target: number }
  | { readonly by: 'warning'; readonly warning: PlanWarning };

/** A target that a combination misses while it meets all others. */
export interface Miss {
  readonly target: number;
  /** The reading there, in its metric unit. */
  readonly value: number;
  /** How far beyond the target, in changes that a rider notices, by weight. */
  readonly size: number;
}

/** A combination that meets every target has no stop; one that misses a single one and is sound otherwise has the miss. */
export interface Verdict {
  readonly stop: Stop | null;
  /** How far the readings are from what they should be exactly, in changes that a rider notices, by weight; 0 where it is stopped for good. */
  readonly off: number;
  readonly miss: Miss | null;
}

type Stand = (state: RideStateKey) => StandingBike | NoStand;

/** Readings this near to a target's edge are on it, in their metric unit: a search for a rest is no more exact. */
const EDGE = 1e-9;

/**
 * Judges setups of one problem. A combination that misses one target is looked at further only while its miss is
 * no larger than `largest`, and one that misses two not at all: neither changes what the search finds.
 */
export function judgeFor(prepared: Prepared): (setup: Setup, largest: number) => Verdict {
  const { bike, targets } = prepared;
  const states = statesInOrder(targets);
  const looked = [...states, ...(states.includes(JUDGED_IN) ? [] : [JUDGED_IN])];
  const asked = states.map((state) => ({
    state,
    inState: targets.flatMap((target, place) => (target.state === state ? [{ target, place }] : [])),
  }));
  const machineOf = keptMachine(
    bike,
    [...prepared.adjusters, ...prepared.others].map(({ key }) => key),
  );
  const laws = keptLaws();
  const stander = (setup: Setup): Stand => {
    const made = machineOf(setup);
    if (!made.ok) return () => made;
    const { machine, springs } = made;
    const sprung = sprungMachine(machine, springs, machine.brake, laws);
    return (state) => standQuickly(machine, loadCase(state, setup), sprung);
  };
  const warningsOf = (inStates: Map<RideStateKey, StandingBike | NoStand>, stand: Stand) => {
    for (const state of looked) if (!inStates.has(state)) inStates.set(state, stand(state));
    if (inStates.get(JUDGED_IN)?.ok === false && !inStates.has(JUDGED_ELSE))
      inStates.set(JUDGED_ELSE, stand(JUDGED_ELSE));
    return allWarnings(bike, inStates);
  };
  const before = warningsOf(new Map(), stander(prepared.setup));

  return (setup, largest) => {
    const stand = stander(setup);
    const inStates = new Map<RideStateKey, StandingBike | NoStand>();
    const values: number[] = [];
    let first: Stop | null = null;
    let miss: Miss | null = null;
    const stopped = (stop: Stop): Verdict => ({ stop: first ?? stop, off: 0, miss: null });
    for (const { state, inState } of asked) {
      const on = stand(state);
      if (!on.ok) return stopped({ by: 'noStand', why: on });
      inStates.set(state, on);
      for (const { target, place } of inState) {
        const value = metricReading(target.reading, on);
        const stop: Stop = { by: 'target', target: place };
        if (typeof value !== 'number') return stopped(stop);
        values[place] = value;
        const beyond = Math.max(target.least - value, value - target.most);
        if (beyond <= EDGE) continue;
        const size = beyond * target.perUnit;
        if (first !== null || !(size <= largest)) return stopped(stop);
        first = stop;
        miss = { target: place, value, size };
      }
    }
    const warning = raisedWarning(before, warningsOf(inStates, stand));
    if (warning !== null) return stopped({ by: 'warning', warning });
    return { stop: first, off: offOf(targets, values), miss };
  };
}

/** The states of the targets, those that need no search for a rest first. */
function statesInOrder(targets: readonly PreparedTarget[]): RideStateKey[] {
  const used = RIDE_STATES.map(({ key }) => key).filter((key) => targets.some(({ state }) => state === key));
  return used.sort((a, b) => Number(rideStateOf(a).springsCarry) - Number(rideStateOf(b).springsCarry));
}

/** From what each reading should be exactly, or from its window. */
function offOf(targets: readonly PreparedTarget[], values: readonly number[]): number {
  return targets.reduce((sum, { aim, least, most, perUnit }, place) => {
    const value = values[place];
    const off = aim === null ? Math.max(0, least - value, value - most) : Math.abs(value - aim);
    return sum + off * perUnit;
  }, 0);
}
