/** What the page and the thread that searches for a setup say to each other. */
import type { Plan, PlansFound } from '../core/plan/plan.ts';
import type { NoProblem, Problem } from '../core/plan/problem.ts';
import type { SearchPart, Share } from '../core/plan/search-part.ts';

/** A problem and its share, once; what other threads found; and perhaps that enough was tried. */
export type ToPlanner =
  | { readonly kind: 'search'; readonly problem: Problem; readonly share: Share }
  | { readonly kind: 'join'; readonly part: SearchPart }
  | { readonly kind: 'stop' };

export interface PlanProgress {
  readonly tried: number;
  /** Of combinations outside the ranges, once all within were tried and none is a plan. */
  readonly triedBeyond: number;
  readonly total: number;
  readonly best: Plan | null;
}

/**
 * How far it is, several times; then, once, what it found, or that the program made a mistake. A thread that only tries
 * a share tells its part.
 */
export type FromPlanner =
  | { readonly kind: 'progress'; readonly progress: PlanProgress }
  | { readonly kind: 'part'; readonly part: SearchPart }
  | { readonly kind: 'found'; readonly found: PlansFound | NoProblem }
  | { readonly kind: 'failed'; readonly message: string };
