/** Adjusters checked and worked out as lists of values on their own steps; tyres as a list of sizes. */
import {
  adjusterOf,
  type Adjuster,
  type NumberAdjuster,
  type TyreAdjuster,
} from '../adjusters/all-adjusters.ts';
import { doesApply } from '../adjusters/does-apply.ts';
import { sameTyre } from '../adjusters/changed-adjusters.ts';
import type { Setup } from '../adjusters/setup.ts';
import type { Bike } from '../parts/bike.ts';
import { byDiameter, tyresForRim } from '../parts/common-tyres.ts';
import { tyreDiameter, type Tyre } from '../parts/tyre.ts';
import { linkRuleOf } from '../standing/chain-of.ts';
import { adjusterRange, type AdjusterRange } from '../standing/adjuster-range.ts';
import { compareTurns } from '../adjusters/working-order.ts';
import type { PreparedAdjuster } from './prepared.ts';
import { noProblem, type Choice, type NoProblem, type PlanAdjusterKey, type Problem } from './problem.ts';
import { usualMinutes } from './usual-minutes.ts';

/** Decimals kept of a value, as of every adjuster's. */
const DECIMALS = 6;

/** Rounding of a count of steps. */
const ROUNDING = 1e-9;

/** More values of one adjuster than this are only counted: the search refuses them anyway. */
const MOST_LISTED = 1_000_001;

/** How far a chain may be longer or shorter than the one on the bike where no range is given, links. */
const CHAIN_REACH = 8;

/** The available adjusters of a problem in working order, or why they cannot be searched. */
export function prepareAdjusters({ bike, setup, choices }: Problem): readonly PreparedAdjuster[] | NoProblem {
  const available = choices.filter(({ available: isAvailable }) => isAvailable);
  if (available.length === 0) return noProblem('nothingAvailable');
  const prepared: PreparedAdjuster[] = [];
  for (const choice of available) {
    const { adjuster } = choice;
    if (prepared.some(({ key }) => key === adjuster)) return noProblem('adjusterTwice', { adjuster });
    const found = prepareAdjuster(choice, bike, setup);
    if ('ok' in found) return found;
    prepared.push(found);
  }
  return prepared.sort((a, b) => compareTurns(a.key, b.key));
}

/**
 * The adjusters of a problem that are not available, held where they stand: what lies beyond is their range, by steps out
 * from there. Left out are those that could not be searched either, and tyres.
 */
export function heldAdjusters({ bike, setup, choices }: Problem): readonly PreparedAdjuster[] {
  return choices.flatMap((choice): PreparedAdjuster[] => {
    const found = choice.available ? null : prepareAdjuster(choice, bike, setup);
    if (found === null || 'ok' in found || found.ends === null || typeof found.start !== 'number') return [];
    const { start, steps, values } = found;
    return [
      {
        ...found,
        values: [start],
        steps: [0],
        ends: { least: start, most: start },
        beyond: (count) =>
          [-count, count].flatMap((step) => {
            const value = values[steps.indexOf(step)];
            return typeof value === 'number' ? [value] : [];
          }),
        mostBeyond: Math.max(...steps.map(Math.abs)),
      },
    ];
  });
}

/** Adjusters that go by steps, all but the tyres. */
export type SteppedKey = Exclude<PlanAdjusterKey, TyreAdjuster['key']>;

/** What of an adjuster that goes by steps may be searched on a bike as set: its range and step; or why it may not. */
export function searchable(
  adjuster: Adjuster,
  bike: Bike,
  setup: Setup,
): (AdjusterRange & { readonly key: SteppedKey; readonly start: number }) | NoProblem {
  const { key, kind } = adjuster;
  if (kind !== 'part') return noProblem('notAPart', { adjuster: key });
  if (!doesApply(adjuster, bike, setup)) return noProblem('notOnThisBike', { adjuster: key });
  if (adjuster.holds === 'tyre') return noProblem('noNumber', { adjuster: key });
  if (adjuster.holds === 'wholeNumberOrNone') {
    const start = setup[adjuster.key];
    if (start === null) return noProblem('noNumber', { adjuster: key });
    const step = linkRuleOf(bike.drive).halfLink ? 1 : 2;
    return { key: adjuster.key, start, least: start - CHAIN_REACH, most: start + CHAIN_REACH, step };
  }
  if (isPlaced(adjuster, setup)) return noProblem('placedByChain', { adjuster: key });
  return { key: adjuster.key, start: setup[adjuster.key], ...adjusterRange(adjuster, bike, setup) };
}

/** How many steps either way an adjuster is tried where nobody says how far. */
const USUAL_REACH = 20;

/** How far an adjuster is tried where nobody says: some steps either way, as far as the bike allows them. */
export function usualRange({
  start,
  least,
  most,
  step,
}: AdjusterRange & { readonly start: number }): Pick<AdjusterRange, 'least' | 'most'> {
  return {
    least: Math.max(least, start - USUAL_REACH * step),
    most: Math.min(most, start + USUAL_REACH * step),
  };
}

const isPlaced = ({ placedBy }: NumberAdjuster, setup: Setup): boolean =>
  placedBy !== undefined && setup[placedBy] !== null;

function prepareAdjuster(choice: Choice, bike: Bike, setup: Setup): PreparedAdjuster | NoProblem {
  const { adjuster: key } = choice;
  const adjuster: Adjuster = adjusterOf(key);
  if (adjuster.holds === 'tyre') return prepareTyres(choice, adjuster, setup);
  const own = searchable(adjuster, bike, setup);
  if ('ok' in own) return own;
  const { least = own.least, most = own.most, step = own.step } = choice;
  const { minutes = usualMinutes(adjuster) } = choice;
  if (![least, most, step, minutes].every(Number.isFinite))
    return noProblem('inputNotANumber', { adjuster: key });
  if (!(step > 0)) return noProblem('stepNotPositive', { adjuster: key, found: step });
  if (adjuster.holds !== 'number' && !Number.isInteger(step))
    return noProblem('stepNotWhole', { adjuster: key, found: step });
  if (minutes < 0) return noProblem('minutesNegative', { adjuster: key, found: minutes });
  if (least > most) return noProblem('rangeReversed', { adjuster: key, found: least, limit: most });
  // A chain has no range of its own: only the slot ends it, and the search finds that out.
  if (adjuster.holds !== 'wholeNumberOrNone' && (least < own.least || most > own.most))
    return noProblem('rangeTooWide', { adjuster: key, least: own.least, most: own.most });
  // Where it stands is one of the values to the last digit; otherwise leaving it alone would count as a turn.
  const at = (n: number): number => (n === 0 ? own.start : Number((own.start + n * step).toFixed(DECIMALS)));
  const steps = stepsBetween(at, (least - own.start) / step, least, most);
  if (steps.length === 0) return noProblem('noStepInRange', { adjuster: key, least, most });
  const [first, last] = [steps[0], steps[steps.length - 1]];
  const reach = (end: number): number => Math.floor(Math.abs(end - own.start) / step + ROUNDING);
  return {
    key: own.key,
    values: steps.map(at),
    steps,
    start: own.start,
    minutes,
    ends: { least, most },
    beyond: (count) =>
      [at(first - count), at(last + count)].filter(
        (value) => (value < least || value > most) && value >= own.least && value <= own.most,
      ),
    mostBeyond: Math.max(0, first + reach(own.least), reach(own.most) - last),
  };
}

/** The fitted tyre and those that may go on instead, by rising diameter: from one to the next is a step. */
function prepareTyres(
  { minutes, tyres }: Choice,
  adjuster: TyreAdjuster,
  setup: Setup,
): PreparedAdjuster | NoProblem {
  const { key } = adjuster;
  const start = setup[key];
  const others = (tyres ?? tyresForRim(key, start)).reduce<readonly Tyre[]>(
    (kept, tyre) => ([start, ...kept].some((each) => sameTyre(each, tyre)) ? kept : [...kept, tyre]),
    [],
  );
  if (others.length === 0) return noProblem('noOtherTyre', { adjuster: key });
  if (others.some((tyre) => !tyreDiameter(tyre).ok)) return noProblem('tyreImpossible', { adjuster: key });
  const work = minutes ?? usualMinutes(adjuster);
  if (!Number.isFinite(work)) return noProblem('inputNotANumber', { adjuster: key });
  if (work < 0) return noProblem('minutesNegative', { adjuster: key, found: work });
  const values = byDiameter([start, ...others]);
  const fitted = values.indexOf(start);
  return {
    key,
    values,
    steps: values.map((_, place) => place - fitted),
    start,
    minutes: work,
    ends: null,
    beyond: () => [],
    mostBeyond: 0,
  };
}

/** Whole steps from where an adjuster stands whose values lie in a range, counted as a mechanic counts turns. */
function stepsBetween(
  at: (steps: number) => number,
  from: number,
  least: number,
  most: number,
): readonly number[] {
  const steps: number[] = [];
  for (let n = Math.ceil(from - ROUNDING); at(n) <= most && steps.length < MOST_LISTED; n += 1)
    if (at(n) >= least) steps.push(n);
  return steps;
}
