/** What a mechanic tries first for a complaint, with what it does on this very bike. */
import { adjusterOf } from '../adjusters/all-adjusters.ts';
import { endTurned } from '../adjusters/working-order.ts';
import type { Setup } from '../adjusters/setup.ts';
import type { Bike } from '../parts/bike.ts';
import { READINGS } from '../readings/all-readings.ts';
import { metricReading } from '../readings/metric-reading.ts';
import { RIDE_STATES, type RideStateKey } from '../riding/states/all-ride-states.ts';
import { standBike } from '../riding/stand-bike.ts';
import { QUANTITIES } from '../units/all-quantities.ts';
import type { Complaint } from './complaint.ts';
import { searchable } from './prepare-adjusters.ts';
import type { PlanAdjusterKey } from './problem.ts';
import type { Moved } from './what-moves-what.ts';

export interface FirstStep {
  readonly adjuster: PlanAdjusterKey;
  readonly from: number;
  readonly to: number;
  /** The reading of the complaint in its ride state. */
  readonly moved: Moved;
  /** Whether it moves that reading the way that helps. */
  readonly helps: boolean;
  /** How far it moves the reading in the other ride states on average, in its metric unit; null where it has no number there. */
  readonly elsewhere: number | null;
  /** How far it moves the reading there, against how far elsewhere. */
  readonly there: number;
}

/** Decimals kept of a value, as of every adjuster's. */
const DECIMALS = 6;

/** Less than this elsewhere, in changes that a rider notices, is nothing, and no step is better for it. */
const NOTHING_ELSEWHERE = 0.01;

/**
 * The first tries of a complaint that this bike has adjusters for, held within their ranges: those that help first, of
 * them those at the complaint's end, of those again the ones that move the reading most there and least in other ride states. A try with which the bike does not
 * stand, or that an adjuster at its end leaves no room for, is left out.
 */
export function firstSteps(bike: Bike, setup: Setup, complaint: Complaint): FirstStep[] {
  const { reading: key, state, better, tries } = complaint;
  const reading = READINGS.find((each) => each.key === key);
  if (reading === undefined) return [];
  const { noticed } = QUANTITIES[reading.quantity];
  const valueIn = (ridden: RideStateKey, set: Setup): number | null => {
    const on = standBike(bike, set, ridden);
    const value = on.ok ? metricReading(reading, on) : null;
    return typeof value === 'number' ? value : null;
  };
  const others = RIDE_STATES.filter(({ key: other, springsCarry }) => springsCarry && other !== state);
  const found = tries.flatMap(({ adjuster, steps }): FirstStep[] => {
    const own = searchable(adjusterOf(adjuster), bike, setup);
    if ('ok' in own) return [];
    const wanted = Number((own.start + steps * own.step).toFixed(DECIMALS));
    const to = Math.min(own.most, Math.max(own.least, wanted));
    if (to === own.start) return [];
    const turned = { ...setup, [adjuster]: to };
    const [before, after] = [valueIn(state, setup), valueIn(state, turned)];
    if (before === null || after === null) return [];
    const elsewhere = others.flatMap(({ key: other }) => {
      const [was, is] = [valueIn(other, setup), valueIn(other, turned)];
      return was === null || is === null ? [] : [Math.abs(is - was)];
    });
    const sum = elsewhere.reduce((so, each) => so + each, 0);
    const mean = elsewhere.length === 0 ? null : sum / elsewhere.length;
    const there = Math.abs(after - before) / Math.max(mean ?? 0, NOTHING_ELSEWHERE * noticed);
    const helps = better === 'more' ? after > before : after < before;
    const moved: Moved = { reading: key, before, after };
    return [{ adjuster, from: own.start, to, moved, helps, elsewhere: mean, there }];
  });
  const atEnd = ({ adjuster }: FirstStep): number =>
    Number(endTurned(adjusterOf(adjuster)) === complaint.end);
  return found.sort((a, b) => Number(b.helps) - Number(a.helps) || atEnd(b) - atEnd(a) || b.there - a.there);
}
