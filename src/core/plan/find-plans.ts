/** The search for setups that reach targets: every combination is tried, in slices that a caller may end. */
import { compareTurns } from '../adjusters/working-order.ts';
import type { NoStand } from '../riding/no-stand.ts';
import { combinations } from './combinations.ts';
import { choosePlans, compareRanked, rank, type Candidate, type Ranked } from './choose-plans.ts';
import { judgeFor, type Miss } from './judge.ts';
import { planTo } from './plan-steps.ts';
import { searchBeyond, type BeyondSearch } from './search-beyond.ts';
import { shareOf, WHOLE, type SearchPart, type Share } from './search-part.ts';
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
  /** Of the combinations within the ranges, those of other threads that have joined among them. */
  readonly tried: () => number;
  /** How many outside the ranges; zero before all within were tried. */
  readonly triedBeyond: () => number;
  readonly isDone: () => boolean;
  /** Whether every combination of this share was tried. */
  readonly isShareDone: () => boolean;
  /** How many other shares have not joined yet. */
  readonly awaited: () => number;
  /** What this share found so far, for the search that joins all. */
  readonly part: () => SearchPart;
  /** Takes in what another share found, once each. */
  readonly join: (part: SearchPart) => void;
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
 * the range that gives one when it is let out by the fewest steps; where no range does, the adjuster that does although it
 * may not be turned.
 * Of several threads each tries a share; the first goes on to the answer once the parts of all others have joined, and
 * finds what one alone would.
 * No answer, with the reason, where targets or adjusters make no sense or there are more than 10⁶ combinations.
 */
export function planSearch(problem: Problem, share: Share = WHOLE): PlanSearch | NoProblem {
  const prepared = prepare(problem);
  return prepared.ok ? searchFor(prepared, share) : prepared;
}

/**
 * So many combinations outside the ranges are tried at most. One thread tries them all, and then a search that finds no
 * plan takes no more than twice as long as its combinations did in two.
 */
const MOST_BEYOND = 500_000;

function searchFor(prepared: Prepared, share: Share): PlanSearch {
  const { targets, total } = prepared;
  const own = shareOf(total, share);
  const all = combinations(prepared);
  const judge = judgeFor(prepared);
  const candidates: Candidate[] = [];
  const stoppedBy = targets.map(() => 0);
  const warnings: Partial<Record<PlanWarning, number>> = {};
  let noStand = 0;
  let whyNoStand: { readonly combination: number; readonly why: NoStand } | null = null;
  let tried = 0;
  let joined = 0;
  let triedElsewhere = 0;
  let nearest: RankedMiss | null = null;
  let best: Ranked | null = null;
  let beyond: BeyondSearch | null = null;
  let withOther: BeyondSearch | null = null;

  const meets = (candidate: Candidate): void => {
    candidates.push(candidate);
    const ranked = rank(prepared, all, candidate);
    if (best === null || compareRanked(ranked, best) < 0) best = ranked;
  };
  const nearer = (candidate: Candidate, miss: Miss): void => {
    const ranked = rank(prepared, all, candidate);
    if (nearest === null || compareMisses({ miss, ranked }, nearest) < 0) nearest = { miss, ranked };
  };
  const tryOne = (combination: number): void => {
    // Once there is a plan, no relaxation is needed.
    const largest = best === null ? (nearest?.miss.size ?? Infinity) : -1;
    const { stop, off, miss } = judge(all.setupAt(combination), largest);
    if (miss !== null) nearer({ combination, off }, miss);
    else if (stop === null) meets({ combination, off });
    if (stop === null) return;
    if (stop.by === 'noStand') {
      noStand += 1;
      whyNoStand ??= { combination, why: stop.why };
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
  const isShareDone = (): boolean => tried === own.count;
  const awaited = (): number => share.of - 1 - joined;
  /** Whether another adjuster is worth a try: only where no range is enough, however far it goes. */
  const isOtherWanted = (): boolean => beyond !== null && beyond.isWhole() && !beyond.hasFound();
  /** Whether a range is enough, or no range and no other adjuster is left to try. */
  const isBeyondDone = (): boolean =>
    beyond !== null && beyond.isDone() && (!isOtherWanted() || (withOther?.isDone() ?? false));
  const isTriedOut = (): boolean => tried + triedElsewhere === total;
  return {
    ok: true,
    total,
    tried: () => tried + triedElsewhere,
    triedBeyond: () => (beyond?.tried() ?? 0) + (withOther?.tried() ?? 0),
    isDone: () => isTriedOut() && (best !== null || isBeyondDone()),
    isShareDone,
    awaited,
    part: () => ({
      tried,
      noStand,
      whyNoStand,
      targets: stoppedBy,
      warnings,
      combinations: Uint32Array.from(candidates, ({ combination }) => combination),
      offs: Float64Array.from(candidates, ({ off }) => off),
      nearest: nearest === null ? null : { candidate: nearest.ranked.candidate, miss: nearest.miss },
    }),
    join: (part) => {
      joined += 1;
      triedElsewhere += part.tried;
      noStand += part.noStand;
      // However many threads share the work, the reason is that of the first combination that does not stand.
      if (
        part.whyNoStand !== null &&
        !(whyNoStand !== null && whyNoStand.combination < part.whyNoStand.combination)
      )
        whyNoStand = part.whyNoStand;
      for (const [place, count] of part.targets.entries()) stoppedBy[place] += count;
      for (const [warning, count] of Object.entries(part.warnings) as [PlanWarning, number][])
        warnings[warning] = (warnings[warning] ?? 0) + count;
      part.combinations.forEach((combination, at) => meets({ combination, off: part.offs[at] }));
      if (part.nearest !== null) nearer(part.nearest.candidate, part.nearest.miss);
    },
    advance: (count) => {
      const end = Math.min(own.count, tried + count);
      const left = count - (end - tried);
      for (; tried < end; tried++) tryOne(own.at(tried));
      if (!isTriedOut() || best !== null) return;
      beyond ??= searchBeyond(prepared, judge, MOST_BEYOND);
      if (!beyond.isDone()) beyond.advance(left);
      else if (isOtherWanted()) {
        withOther ??= searchBeyond(withOthers(prepared), judge, MOST_BEYOND - beyond.tried());
        withOther.advance(left);
      }
    },
    best: () => (best === null ? null : planOf(best.candidate)),
    found: () => ({
      ok: true,
      plans: choosePlans(prepared, all, candidates).map(planOf),
      tried: tried + triedElsewhere,
      total,
      stops: { noStand, whyNoStand: whyNoStand?.why ?? null, targets: stoppedBy, warnings },
      relaxation: relaxation(),
      wider: beyond?.found() ?? null,
      other: withOther?.found() ?? null,
      withOther: { tried: withOther?.tried() ?? 0, isWhole: withOther?.isWhole() ?? false },
      beyond: { tried: beyond?.tried() ?? 0, isWhole: beyond?.isWhole() ?? false },
    }),
  };
}

/** The same problem with the adjusters that may not be turned, and no way beyond the ranges of those that may. */
function withOthers(prepared: Prepared): Prepared {
  const within = prepared.adjusters.map((each) => ({ ...each, beyond: () => [], mostBeyond: 0 }));
  const adjusters = [...within, ...prepared.others].sort((a, b) => compareTurns(a.key, b.key));
  return { ...prepared, adjusters };
}

interface RankedMiss {
  readonly miss: Miss;
  readonly ranked: Ranked;
}

/** The smaller miss first, of equal ones the better plan. */
function compareMisses(a: RankedMiss, b: RankedMiss): number {
  return a.miss.size - b.miss.size || compareRanked(a.ranked, b.ranked);
}
