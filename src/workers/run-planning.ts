/** Runs a search for a setup in slices, so that whoever runs it can listen in between. */
import { planSearch, type PlanSearch } from '../core/plan/find-plans.ts';
import type { NoProblem, Problem } from '../core/plan/problem.ts';
import { WHOLE, type SearchPart, type Share } from '../core/plan/search-part.ts';
import type { FromPlanner } from './plan-messages.ts';

/** Combinations between two times of listening: a few milliseconds. */
const SLICE = 500;

/** Time between two reports, ms. */
const REPORT_EVERY_MS = 120;

export interface RunningSearch {
  /** Ends the search; what was found until then is reported. */
  stop(): void;
  /** Takes in what another thread found of its share. */
  join(part: SearchPart): void;
}

type Begin = (problem: Problem, share: Share) => PlanSearch | NoProblem;

/** What comes after a slice: another one, the wait for other threads, nothing, or the slice that is asked for already. */
type Next = 'slice' | 'wait' | 'end' | 'asked';

/**
 * Searches, tells how far it is, and tells what it found, at the end or once it is stopped. The first of several threads
 * waits for the parts of the others before that; each of those hands over its part. An error ends the search and is reported.
 */
export function runPlanning(
  problem: Problem,
  tell: (message: FromPlanner) => void,
  share: Share = WHOLE,
  begin: Begin = planSearch,
): RunningSearch {
  const fail = (error: unknown): void =>
    tell({ kind: 'failed', message: error instanceof Error ? error.message : String(error) });
  const idle: RunningSearch = { stop: () => undefined, join: () => undefined };
  let search: PlanSearch | NoProblem;
  try {
    search = begin(problem, share);
  } catch (error) {
    fail(error);
    return idle;
  }
  if (!search.ok) {
    tell({ kind: 'found', found: search });
    return idle;
  }
  const { advance, tried, triedBeyond, isDone, isShareDone, awaited, total, best, found, part, join } =
    search;
  let isStopped = false;
  let reported = performance.now();
  // A message comes at once where a timer waits, and whatever came before it is heard first.
  const { port1, port2 } = new MessageChannel();
  const goOn = (): Next => {
    if (!isStopped) advance(SLICE);
    const isOver = isStopped || isShareDone();
    if (isOver && share.place > 0) {
      tell({ kind: 'part', part: part() });
      return 'end';
    }
    if (isOver && awaited() > 0) return 'wait';
    if (isStopped || isDone()) {
      tell({ kind: 'found', found: found() });
      return 'end';
    }
    const now = performance.now();
    if (now - reported > REPORT_EVERY_MS) {
      reported = now;
      tell({
        kind: 'progress',
        progress: { tried: tried(), triedBeyond: triedBeyond(), total, best: best() },
      });
    }
    return 'slice';
  };
  let isWaiting = false;
  const guarded = (act: () => Next): void => {
    let next: Next = 'end';
    try {
      next = act();
    } catch (error) {
      fail(error);
    }
    isWaiting = next === 'wait';
    if (next === 'slice') port2.postMessage(null);
    else if (next === 'end') port1.close();
  };
  port1.onmessage = () => guarded(goOn);
  port2.postMessage(null);
  return {
    stop: () => (isStopped = true),
    join: (other) =>
      guarded(() => {
        join(other);
        return isWaiting ? goOn() : 'asked';
      }),
  };
}
