/** Runs a search for a setup in slices, so that whoever runs it can listen in between. */
import { planSearch } from '../core/plan/find-plans.ts';
import type { Problem } from '../core/plan/problem.ts';
import type { FromPlanner } from './plan-messages.ts';

/** Combinations between two times of listening: a few milliseconds. */
const SLICE = 500;

/** Time between two reports, ms. */
const REPORT_EVERY_MS = 120;

export interface RunningSearch {
  /** Ends the search; what was found until then is told. */
  stop(): void;
}

/** Searches, tells how far it is, and tells what it found, at the end or once it is stopped. */
export function runPlanning(problem: Problem, tell: (message: FromPlanner) => void): RunningSearch {
  const search = planSearch(problem);
  if (!search.ok) {
    tell({ kind: 'found', found: search });
    return { stop: () => undefined };
  }
  const { advance, tried, total, best, found } = search;
  let isStopped = false;
  let reported = performance.now();
  // A message comes at once where a timer waits, and whatever came before it is heard first.
  const { port1, port2 } = new MessageChannel();
  const finish = (): void => {
    port1.close();
    tell({ kind: 'found', found: found() });
  };
  port1.onmessage = () => {
    if (!isStopped) advance(SLICE);
    if (isStopped || tried() === total) {
      finish();
      return;
    }
    const now = performance.now();
    if (now - reported > REPORT_EVERY_MS) {
      reported = now;
      tell({ kind: 'progress', progress: { tried: tried(), total, best: best() } });
    }
    port2.postMessage(null);
  };
  port2.postMessage(null);
  return { stop: () => (isStopped = true) };
}
