/** A search shared among threads: which combinations each of them tries, and what it tells the one that joins all. */
import type { NoStand } from '../riding/no-stand.ts';
import type { Candidate } from './choose-plans.ts';
import type { Miss } from './judge.ts';
import type { PlanWarning } from './raised-warnings.ts';

/** One of `of` threads, the first of them at place 0. */
export interface Share {
  readonly place: number;
  readonly of: number;
  /** How many combinations in a row one thread tries; then come those of the next thread. */
  readonly inARow: number;
}

/** Far fewer than a search has, and many that share their slow parts. */
const IN_A_ROW = 500;

export const WHOLE: Share = { place: 0, of: 1, inARow: IN_A_ROW };

/** The shares of so many threads, the one that joins all first. */
export function sharesFor(of: number): Share[] {
  return Array.from({ length: of }, (_, place) => ({ place, of, inARow: IN_A_ROW }));
}

/** A search that takes less than a second or two is no quicker in two threads: each has to start first. */
const WORTH_SHARING = 20_000;

/** More threads than this find no more cores on most machines. */
const MOST_THREADS = 4;

/** How many threads a search is shared among on a machine with so many cores. */
export function threadsFor(combinations: number, cores: number): number {
  return combinations < WORTH_SHARING ? 1 : Math.max(1, Math.min(MOST_THREADS, cores));
}

/** The combinations of a share: how many, and the n-th of them by its number. Rows go round the threads in turn. */
export function shareOf(
  total: number,
  { place, of, inARow }: Share,
): { readonly count: number; readonly at: (n: number) => number } {
  const round = inARow * of;
  const last = (total % round) - place * inARow;
  return {
    count: Math.floor(total / round) * inARow + Math.min(inARow, Math.max(0, last)),
    at: (n) => Math.floor(n / inARow) * round + place * inARow + (n % inARow),
  };
}

/** What a share has found: plain numbers, since a thread hands them over. */
export interface SearchPart {
  readonly tried: number;
  readonly noStand: number;
  /** The first that does not stand, by its number. */
  readonly whyNoStand: { readonly combination: number; readonly why: NoStand } | null;
  /** By the target's place in the list. */
  readonly targets: readonly number[];
  readonly warnings: Readonly<Partial<Record<PlanWarning, number>>>;
  /** Those that meet every target, and how far each of them is off. */
  readonly combinations: Uint32Array<ArrayBuffer>;
  readonly offs: Float64Array<ArrayBuffer>;
  readonly nearest: { readonly candidate: Candidate; readonly miss: Miss } | null;
}
