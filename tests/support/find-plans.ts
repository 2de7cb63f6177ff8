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

/** The same, tried by several searches that each have a share of so many combinations in a row, and joined. */
export function findPlansShared(problem: Problem, of: number, inARow: number): PlansFound | NoProblem {
  const [first, ...others] = Array.from({ length: of }, (_, place) =>
    planSearch(problem, { place, of, inARow }),
  );
  if (!first.ok) return first;
  // The last one first: the order in which they join changes nothing.
  for (const other of others.reverse()) {
    if (!other.ok) return other;
    while (!other.isShareDone()) other.advance(SLICE);
    first.join(other.part());
  }
  while (!first.isDone()) first.advance(SLICE);
  return first.found();
}

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
