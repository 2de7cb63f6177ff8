/** Adjusters checked and worked out as lists of values on their own steps. */
import { adjusterOf, type Adjuster, type NumberAdjuster } from '../adjusters/all-adjusters.ts';
import { doesApply } from '../adjusters/does-apply.ts';
import type { Setup } from '../adjusters/setup.ts';
import type { Bike } from '../parts/bike.ts';
import { linkRuleOf } from '../standing/chain-of.ts';
import { adjusterRange, type AdjusterRange } from '../standing/adjuster-range.ts';
import { compareTurns } from '../adjusters/working-order.ts';
import type { PreparedAdjuster } from './prepared.ts';
import { noProblem, type Choice, type NoProblem, type PlanAdjusterKey, type Problem } from './problem.ts';
import { usualMinutes } from './usual-minutes.ts';

/** Decimals kept of a value, as of every adjuster's. */
const DECIMALS = 6;

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

/** What of an adjuster may be searched on a bike as set: its range and step; or why it may not. */
export function searchable(
  adjuster: Adjuster,
  bike: Bike,
  setup: Setup,
): (AdjusterRange & { readonly key: PlanAdjusterKey; readonly start: number }) | NoProblem {
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

const isPlaced = ({ placedBy }: NumberAdjuster, setup: Setup): boolean =>
  placedBy !== undefined && setup[placedBy] !== null;

function prepareAdjuster(choice: Choice, bike: Bike, setup: Setup): PreparedAdjuster | NoProblem {
  const { adjuster: key } = choice;
  const adjuster = adjusterOf(key);
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
  const values = valuesBetween(own.start, least, most, step);
  return values.length === 0
    ? noProblem('noStepInRange', { adjuster: key, least, most })
    : { key: own.key, values, start: own.start, step, minutes };
}

/** Whole steps counted from `start`, as a mechanic counts turns. */
function valuesBetween(start: number, least: number, most: number, step: number): readonly number[] {
  // Where it stands is one of the values to the last digit, or leaving it alone would be a turn.
  const at = (n: number): number => (n === 0 ? start : Number((start + n * step).toFixed(DECIMALS)));
  const values: number[] = [];
  const first = Math.ceil((least - start) / step - 1e-9);
  for (let n = first; at(n) <= most && values.length < MOST_LISTED; n += 1)
    if (at(n) >= least) values.push(at(n));
  return values;
}
