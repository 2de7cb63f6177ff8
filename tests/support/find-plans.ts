/** A search for setups from its first combination to its last, for tests that need nothing in between. */
import { planSearch } from '../../src/core/plan/find-plans.ts';
import type { Plan, PlansFound } from '../../src/core/plan/plan.ts';
import type { NoProblem, Problem } from '../../src/core/plan/problem.ts';

/** How far a search has come. */
interface Progress {
  readonly tried: number;
  readonly triedBeyond: number;
  readonly total: number;
  readonly best: () => Plan | null;
}

/** Combinations between two reports of progress. */
const SLICE = 1000;

/** `report` hears of progress and ends the search by false; what was found until then is kept. */
export function findPlans(
  problem: Problem,
  report: (progress: Progress) => boolean = () => true,
): PlansFound | NoProblem {
  const search = planSearch(problem);
  if (!search.ok) return search;
  const { advance, tried, triedBeyond, isDone, total, best, found } = search;
  while (!isDone()) {
    advance(SLICE);
    if (!report({ tried: tried(), triedBeyond: triedBeyond(), total, best })) break;
  }
  return found();
}
