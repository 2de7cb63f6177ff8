/** The search for setups that reach targets: every combination is tried, in slices that a caller may end. */
import type { NoStand } from '../riding/no-stand.ts';
import { combinations } from './combinations.ts';
import { choosePlans, compareRanked, rank, type Candidate, type Ranked } from './choose-plans.ts';
import { judgeFor, type Miss } from './judge.ts';
import { planTo } from './plan-steps.ts';
import { searchBeyond, type BeyondSearch } from './search-beyond.ts';
import type { Plan, PlansFound, Relaxation } from './plan.ts';
import { prepare } from './prepare.ts';
import type { Prepared } from './prepared.ts';
import type { NoProblem, Problem } from './problem.ts';
import type { PlanWarning } from './raised-warnings.ts';

/**
 * A search that stands somewhere between its first combination and its last. Where none of them is a plan, it goes on
 * outside the ranges.
 */
export interface PlanSearch {
  readonly ok: true;
  readonly total: number;
  /** Of the combinations within the ranges. */
  readonly tried: () => number;
  /** How many outside the ranges; zero before all within were tried. */
  readonly triedBeyond: () => number;
  readonly isDone: () => boolean;
  /** Tries so many more combinations. */
  readonly advance: (count: number) => void;
  /** The best plan so far; null before the first. */
  readonly best: () => Plan | null;
  /** What was found so far; all there is once it is done. */
  readonly found: () => PlansFound;
}

/**
 * Setups of whole workshop steps that meet every target, each reading in its own ride state, and raise no warning that
 * the bike does not have as set: every combination of the adjusters' values is tried. Plans are ranked by how far the
 * readings are from what they should be, in changes that a rider notices, plus an hour's work as one such change.
 * Where there are none: what stopped how many combinations, the smallest change of one target that gives a plan, and
 * the range that gives one when it is let out by the fewest steps.
 * No answer, with the reason, where targets or adjusters make no sense or there are more than 10⁶ combinations.
 */
export function planSearch(problem: Problem): PlanSearch | NoProblem {
  const prepared = prepare(problem);
  return prepared.ok ? searchFor(prepared) : prepared;
}

function searchFor(prepared: Prepared): PlanSearch {
  const { targets, total } = prepared;
  const all = combinations(prepared);
  const judge = judgeFor(prepared);
  const candidates: Candidate[] = [];
  const stoppedBy = targets.map(() => 0);
  const warnings: Partial<Record<PlanWarning, number>> = {};
  let noStand = 0;
  let whyNoStand: NoStand | null = null;
  let tried = 0;
  let nearest: RankedMiss | null = null;
  let best: Ranked | null = null;
  let beyond: BeyondSearch | null = null;

  const tryOne = (combination: number): void => {
    // Once there is a plan, no relaxation is needed.
    const largest = best === null ? (nearest?.miss.size ?? Infinity) : -1;
    const { stop, off, miss } = judge(all.setupAt(combination), largest);
    if (stop === null || miss !== null) {
      const ranked = rank(prepared, all, { combination, off });
      if (miss !== null) {
        if (nearest === null || compareMisses({ miss, ranked }, nearest) < 0) nearest = { miss, ranked };
      } else {
        candidates.push(ranked.candidate);
        if (best === null || compareRanked(ranked, best) < 0) best = ranked;
      }
    }
    if (stop === null) return;
    if (stop.by === 'noStand') {
      noStand += 1;
      whyNoStand ??= stop.why;
    } else if (stop.by === 'target') stoppedBy[stop.target] += 1;
    else warnings[stop.warning] = (warnings[stop.warning] ?? 0) + 1;
  };
  const planOf = ({ combination, off }: Candidate): Plan => planTo(prepared, all.setupAt(combination), off);
  const relaxation = (): Relaxation | null => {
    if (best !== null || nearest === null) return null;
    const { miss, ranked } = nearest;
    const { least, most } = targets[miss.target];
    const by = Math.max(least - miss.value, miss.value - most);
    return { target: miss.target, to: miss.value, by, plan: planOf(ranked.candidate) };
  };
  return {
    ok: true,
    total,
    tried: () => tried,
    triedBeyond: () => beyond?.tried() ?? 0,
    isDone: () => tried === total && (best !== null || (beyond?.isDone() ?? false)),
    advance: (count) => {
      const end = Math.min(total, tried + count);
      const left = count - (end - tried);
      for (; tried < end; tried++) tryOne(tried);
      if (tried < total || best !== null) return;
      beyond ??= searchBeyond(prepared, judge);
      beyond.advance(left);
    },
    best: () => (best === null ? null : planOf(best.candidate)),
    found: () => ({
      ok: true,
      plans: choosePlans(prepared, all, candidates).map(planOf),
      tried,
      total,
      stops: { noStand, whyNoStand, targets: stoppedBy, warnings },
      relaxation: relaxation(),
      wider: beyond?.found() ?? null,
      beyond: { tried: beyond?.tried() ?? 0, isWhole: beyond?.isWhole() ?? false },
    }),
  };
}

interface RankedMiss {
  readonly miss: Miss;
  readonly ranked: Ranked;
}

/** The smaller miss first, of equal ones the better plan. */
function compareMisses(a: RankedMiss, b: RankedMiss): number {
  return a.miss.size - b.miss.size || compareRanked(a.ranked, b.ranked);
}
