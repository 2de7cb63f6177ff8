/** Threads beside the plan command, each of which tries a share of the search. */
import { Worker } from 'node:worker_threads';
import type { PlanSearch } from '../core/plan/find-plans.ts';
import type { Problem } from '../core/plan/problem.ts';
import type { SearchPart, Share } from '../core/plan/search-part.ts';

/** Combinations between two times of listening for Ctrl+C: some milliseconds. */
const SLICE = 500;

/** How long to wait for other threads before listening again, ms. */
const LISTEN_MS = 50;

export interface SharedSearch {
  readonly problem: Problem;
  readonly share: Share;
}

/** How many combinations a thread has tried, often; then, once, what it found. */
export type FromShare =
  { readonly kind: 'tried'; readonly tried: number } | { readonly kind: 'part'; readonly part: SearchPart };

/** A thread that tries a share. */
export interface ShareThread {
  readonly tried: () => number;
  /** Ends it; what it found until then is its part. */
  readonly end: () => void;
  readonly part: Promise<SearchPart>;
}

/** Starts `file` in a thread. An error there is one here: the promise of its part fails with it. */
export function startShare(file: URL, search: SharedSearch): ShareThread {
  const worker = new Worker(file, { workerData: search });
  let tried = 0;
  const part = new Promise<SearchPart>((resolve, reject) => {
    worker.on('message', (message: FromShare) => {
      if (message.kind === 'tried') tried = message.tried;
      else resolve(message.part);
    });
    worker.on('error', reject);
  });
  return { tried: () => tried, end: () => worker.postMessage('end'), part };
}

/**
 * Tries every combination, this thread its share and then, once all others have joined, what lies beyond the ranges.
 * `report` is called in between; once `isEnded` says so, what all have found until then is joined.
 */
export async function searchThrough(
  search: PlanSearch,
  threads: readonly ShareThread[],
  report: () => void,
  isEnded: () => boolean,
): Promise<void> {
  const parts = Promise.all(threads.map(({ part }) => part));
  const joinAll = async (): Promise<void> => (await parts).forEach(search.join);
  while (!search.isDone() && !isEnded()) {
    if (search.isShareDone() && search.awaited() > 0) {
      // Ctrl+C is heard while the others end their shares.
      const tick = new Promise<boolean>((done) => setTimeout(() => done(false), LISTEN_MS));
      if (await Promise.race([parts.then(() => true), tick])) await joinAll();
    } else {
      search.advance(SLICE);
      // And between two slices.
      await new Promise((done) => setImmediate(done));
    }
    report();
  }
  if (search.awaited() === 0) return;
  for (const { end } of threads) end();
  await joinAll();
}
