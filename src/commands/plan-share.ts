/** Runs in a thread beside the plan command: tries one share of a search and hands over what it found. */
import { parentPort, workerData } from 'node:worker_threads';
import { planSearch } from '../core/plan/find-plans.ts';
import type { FromShare, SharedSearch } from './plan-threads.ts';

/** Combinations between two times of listening: some milliseconds. */
const SLICE = 500;

const { problem, share } = workerData as SharedSearch;
const search = planSearch(problem, share);
if (!search.ok || parentPort === null) throw new Error('a share without its search');
const port = parentPort;
const tell = (message: FromShare): void => port.postMessage(message);
let isEnded = false;
port.once('message', () => (isEnded = true));
while (!search.isShareDone() && !isEnded) {
  search.advance(SLICE);
  tell({ kind: 'tried', tried: search.tried() });
  await new Promise((done) => setImmediate(done));
}
tell({ kind: 'part', part: search.part() });
port.close();
