/** A problem checked and worked out, or why there is nothing to search. */
import { metricReading } from '../readings/metric-reading.ts';
import { standBike } from '../riding/stand-bike.ts';
import { heldAdjusters, prepareAdjusters } from './prepare-adjusters.ts';
import { prepareTargets } from './prepare-targets.ts';
import type { Prepared, PreparedAdjuster } from './prepared.ts';
import { noProblem, type NoProblem, type Problem } from './problem.ts';

/** All combinations are tried up to this many. */
export const MOST_COMBINATIONS = 1_000_000;

/**
 * The problem worked out. Refused with the reason where a target or an adjuster makes no sense, where nothing may be
 * turned, and beyond 10⁶ combinations: then with the adjuster to hold.
 */
export function prepare(problem: Problem): Prepared | NoProblem {
  const targets = prepareTargets(problem);
  if ('ok' in targets) return targets;
  const adjusters = prepareAdjusters(problem);
  if ('ok' in adjusters) return adjusters;
  const total = adjusters.reduce((product, { values }) => product * values.length, 1);
  const { bike, setup } = problem;
  const others = heldAdjusters(problem);
  const prepared: Prepared = { ok: true, bike, setup, targets, adjusters, others, total };
  return total <= MOST_COMBINATIONS
    ? prepared
    : noProblem('tooMany', { adjuster: adjusterToHold(prepared), found: total, limit: MOST_COMBINATIONS });
}

/**
 * The adjuster to leave as it is when there are too many combinations: of those that bring them within what is tried,
 * the one that moves the targets least from end to end of its range; where no single one does, the one with most values.
 */
function adjusterToHold(prepared: Prepared): PreparedAdjuster['key'] {
  const { adjusters, total } = prepared;
  const enough = adjusters.filter(({ values }) => total / values.length <= MOST_COMBINATIONS);
  if (enough.length === 0)
    return adjusters.reduce((most, each) => (each.values.length > most.values.length ? each : most)).key;
  const reaches = enough.map((adjuster) => ({ key: adjuster.key, reach: targetReach(prepared, adjuster) }));
  return reaches.reduce((least, each) => (each.reach < least.reach ? each : least)).key;
}

/** How far the targets move from end to end of an adjuster's range, in changes that a rider notices, by weight. */
function targetReach({ bike, setup, targets }: Prepared, { key, values }: PreparedAdjuster): number {
  return targets.reduce((sum, { reading, state, perUnit }) => {
    const [first, last] = [values[0], values[values.length - 1]].map((value) => {
      const on = standBike(bike, { ...setup, [key]: value }, state);
      return on.ok ? metricReading(reading, on) : null;
    });
    // An end at which there is no reading says nothing about the way there.
    return typeof first === 'number' && typeof last === 'number'
      ? sum + perUnit * Math.abs(last - first)
      : sum;
  }, 0);
}
