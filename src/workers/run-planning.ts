/** Runs a search for a setup in slices, so that whoever runs it can listen in between. */
import { planSearch, type PlanSearch } from '../core/plan/find-plans.ts';
import type { NoProblem, Problem } from '../core/plan/problem.ts';
import type { FromPlanner } from './plan-messages.ts';

/** Combinations between two times of listening: a few milliseconds. */
const SLICE = 500;

/** Time between two reports, ms. */
const REPORT_EVERY_MS = 120;

export interface RunningSearch {
  /** Ends the search; what was found until then is told. */
  stop(): void;
}

type Begin = (problem: Problem) => PlanSearch | NoProblem;

/**
 * Searches, tells how far it is, and tells what it found, at the end or once it is stopped. An error ends the search and is
 * told.
 */
export function runPlanning(
  problem: Problem,
  tell: (message: FromPlanner) => void,
  begin: Begin = planSearch,
): RunningSearch {
  const fail = (error: unknown): void =>
    tell({ kind: 'failed', message: error instanceof Error ? error.message : String(error) });
  const idle: RunningSearch = { stop: () => undefined };
  let search: PlanSearch | NoProblem;
  try {
    search = begin(problem);
  } catch (error) {
    fail(error);
    return idle;
  }
  if (!search.ok) {
    tell({ kind: 'found', found: search });
    return idle;
  }
  const { advance, tried, triedBeyond, isDone, total, best, found } = search;
  let isStopped = false;
  let reported = performance.now();
  // A message comes at once where a timer waits, and whatever came before it is heard first.
  const { port1, port2 } = new MessageChannel();
  /** Whether another slice is to come. */
  const goOn = (): boolean => {
    if (!isStopped) advance(SLICE);
    if (isStopped || isDone()) {
      tell({ kind: 'found', found: found() });
      return false;
    }
    const now = performance.now();
    if (now - reported > REPORT_EVERY_MS) {
      reported = now;
      tell({
        kind: 'progress',
        progress: { tried: tried(), triedBeyond: triedBeyond(), total, best: best() },
      });
    }
    return true;
  };
  port1.onmessage = () => {
    let more = false;
    try {
      more = goOn();
    } catch (error) {
      fail(error);
    }
    if (more) port2.postMessage(null);
    else port1.close();
  };
  port2.postMessage(null);
  return { stop: () => (isStopped = true) };
}
