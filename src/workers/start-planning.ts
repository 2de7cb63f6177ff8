/** Starts a search for a setup in threads beside the page, or on the page where the browser starts none. */
import { betterPlan } from '../core/plan/choose-plans.ts';
import type { Plan } from '../core/plan/plan.ts';
import type { Problem } from '../core/plan/problem.ts';
import { sharesFor, threadsFor, type Share } from '../core/plan/search-part.ts';
import type { FromPlanner, PlanProgress, ToPlanner } from './plan-messages.ts';
import { runPlanning } from './run-planning.ts';

/** A search that was started. */
export interface StartedSearch {
  /** Ends the search; what was found until then is reported. */
  stop(): void;
}

interface Thread {
  readonly worker: Worker;
  readonly share: Share;
  /** A thread that has been heard runs, so what it dies of later would end a search on the page as well. */
  isHeard: boolean;
  progress: PlanProgress | null;
}

/**
 * Shares a search of `total` combinations among as many threads as the machine has cores. Tells how far it is and, once,
 * what it found or that it failed; after that the threads are gone. Where a thread does not start, the page searches.
 */
export function startPlanning(
  problem: Problem,
  total: number,
  tell: (message: FromPlanner) => void,
): StartedSearch {
  if (typeof Worker === 'undefined') return runPlanning(problem, tell);
  let threads: readonly Thread[] = [];
  let onPage: StartedSearch | null = null;
  let isOver = false;
  let mostTried = 0;
  const leave = (): void => {
    for (const { worker } of threads) worker.terminate();
    threads = [];
  };
  const end = (message: FromPlanner): void => {
    if (isOver) return;
    isOver = true;
    leave();
    tell(message);
  };
  const onThePage = (): void => {
    leave();
    onPage ??= runPlanning(problem, tell);
  };
  const send = ({ worker }: Thread, message: ToPlanner): void => worker.postMessage(message);
  const listen = (thread: Thread): void => {
    const { worker } = thread;
    worker.addEventListener('message', ({ data }: MessageEvent<FromPlanner>) => {
      thread.isHeard = true;
      if (data.kind === 'progress') {
        thread.progress = data.progress;
        const progress = together(threads);
        // What a thread that is done has tried counts again once it has joined.
        mostTried = Math.max(mostTried, progress.tried);
        tell({ kind: 'progress', progress: { ...progress, tried: mostTried } });
      } else if (data.kind !== 'part') end(data);
      else {
        // The first thread counts what joins it.
        thread.progress = null;
        worker.terminate();
        send(threads[0], { kind: 'join', part: data.part });
      }
    });
    worker.addEventListener('error', (event) => {
      event.preventDefault();
      if (thread.isHeard) end({ kind: 'failed', message: event.message });
      else onThePage();
    });
    worker.addEventListener('messageerror', () => end({ kind: 'failed', message: 'its answer was cut off' }));
  };
  try {
    threads = sharesFor(threadsFor(total, navigator.hardwareConcurrency)).map((share) => ({
      worker: new Worker(new URL('./core.worker.ts', import.meta.url), { type: 'module' }),
      share,
      isHeard: false,
      progress: null,
    }));
  } catch {
    // A browser that lends no thread: the page does it itself.
    return runPlanning(problem, tell);
  }
  for (const thread of threads) {
    listen(thread);
    send(thread, { kind: 'search', problem, share: thread.share });
  }
  return {
    stop: () => {
      if (onPage !== null) onPage.stop();
      else for (const thread of threads) send(thread, { kind: 'stop' });
    },
  };
}

/** How far all threads are, and the best plan of any. */
function together(threads: readonly Thread[]): PlanProgress {
  const all = threads.flatMap(({ progress }) => (progress === null ? [] : [progress]));
  const sum = (of: (progress: PlanProgress) => number): number =>
    all.reduce((so, progress) => so + of(progress), 0);
  const best = all.reduce<Plan | null>((so, progress) => betterPlan(so, progress.best), null);
  return {
    tried: sum(({ tried }) => tried),
    triedBeyond: sum(({ triedBeyond }) => triedBeyond),
    total: all[0].total,
    best,
  };
}
