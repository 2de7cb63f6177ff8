/** Starts a search for a setup in a thread beside the page, or on the page where the browser starts no thread. */
import type { Problem } from '../core/plan/problem.ts';
import type { FromPlanner, ToPlanner } from './plan-messages.ts';
import { runPlanning, type RunningSearch } from './run-planning.ts';

/** Tells how far the search is and, once, what it found; after that the thread is gone. */
export function startPlanning(problem: Problem, tell: (message: FromPlanner) => void): RunningSearch {
  if (typeof Worker === 'undefined') return runPlanning(problem, tell);
  const worker = new Worker(new URL('./plan.worker.ts', import.meta.url), { type: 'module' });
  const send = (message: ToPlanner): void => worker.postMessage(message);
  let onPage: RunningSearch | null = null;
  worker.addEventListener('message', ({ data }: MessageEvent<FromPlanner>) => {
    if (data.kind === 'found') worker.terminate();
    tell(data);
  });
  worker.addEventListener('error', () => {
    worker.terminate();
    onPage ??= runPlanning(problem, tell);
  });
  send({ kind: 'search', problem });
  return {
    stop: () => {
      if (onPage === null) send({ kind: 'stop' });
      else onPage.stop();
    },
  };
}
