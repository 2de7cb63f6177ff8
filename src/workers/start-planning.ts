/** Starts a search for a setup in a thread beside the page, or on the page where the browser starts no thread. */
import type { Problem } from '../core/plan/problem.ts';
import type { FromPlanner, ToPlanner } from './plan-messages.ts';
import { runPlanning, type RunningSearch } from './run-planning.ts';

/** Tells how far the search is and, once, what it found or that it failed; after that the thread is gone. */
export function startPlanning(problem: Problem, tell: (message: FromPlanner) => void): RunningSearch {
  if (typeof Worker === 'undefined') return runPlanning(problem, tell);
  let worker: Worker;
  try {
    worker = new Worker(new URL('./core.worker.ts', import.meta.url), { type: 'module' });
  } catch {
    // A browser that lends no thread: the page does it itself.
    return runPlanning(problem, tell);
  }
  const send = (message: ToPlanner): void => worker.postMessage(message);
  let onPage: RunningSearch | null = null;
  let isOver = false;
  const end = (message: FromPlanner): void => {
    if (isOver) return;
    isOver = true;
    worker.terminate();
    tell(message);
  };
  // A thread that has been heard runs, so what it dies of later would end a search on the page as well.
  let isHeard = false;
  worker.addEventListener('message', ({ data }: MessageEvent<FromPlanner>) => {
    isHeard = true;
    if (data.kind === 'progress') tell(data);
    else end(data);
  });
  worker.addEventListener('error', (event) => {
    event.preventDefault();
    if (isHeard) {
      end({ kind: 'failed', message: event.message });
      return;
    }
    worker.terminate();
    onPage ??= runPlanning(problem, tell);
  });
  worker.addEventListener('messageerror', () => end({ kind: 'failed', message: 'its answer was cut off' }));
  send({ kind: 'search', problem });
  return {
    stop: () => {
      if (onPage === null) send({ kind: 'stop' });
      else onPage.stop();
    },
  };
}
