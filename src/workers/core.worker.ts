/** The thread that searches for a setup, so that the page stays free for the hand meanwhile. */
import type { FromPlanner, ToPlanner } from './plan-messages.ts';
import { runPlanning, type RunningSearch } from './run-planning.ts';

let running: RunningSearch | null = null;

addEventListener('message', ({ data }: MessageEvent<ToPlanner>) => {
  if (data.kind === 'stop') running?.stop();
  else running = runPlanning(data.problem, (message: FromPlanner) => postMessage(message));
});
