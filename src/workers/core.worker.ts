/** The thread that searches for a setup and works out what is unsure about a measured bike, so that the page stays free for the hand meanwhile. */
import type { FromMeasurer, ToMeasurer } from './measure-messages.ts';
import type { FromPlanner, ToPlanner } from './plan-messages.ts';
import { runMeasuring } from './run-measuring.ts';
import { runPlanning, type RunningSearch } from './run-planning.ts';

let running: RunningSearch | null = null;

addEventListener('message', ({ data }: MessageEvent<ToPlanner | ToMeasurer>) => {
  if (data.kind === 'measure') {
    const { number, question } = data;
    postMessage({ kind: 'measured', number, answer: runMeasuring(data, question) } satisfies FromMeasurer);
  } else if (data.kind === 'stop') running?.stop();
  else if (data.kind === 'join') running?.join(data.part);
  else running = runPlanning(data.problem, (message: FromPlanner) => postMessage(message), data.share);
});
