/** How long a search for a setup takes over as many combinations as it tries at most, shared among threads as the command does. */
import { availableParallelism } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { bundle } from '../../src/commands/bundle.js';
import { root } from '../../src/commands/install.js';
import { searchThrough, startShare } from '../../src/commands/plan-threads.ts';
import { combinations } from '../../src/core/plan/combinations.ts';
import { planSearch } from '../../src/core/plan/find-plans.ts';
import { prepare } from '../../src/core/plan/prepare.ts';
import type { Problem } from '../../src/core/plan/problem.ts';
import { sharesFor, threadsFor } from '../../src/core/plan/search-part.ts';
import { metricReading } from '../../src/core/readings/metric-reading.ts';
import { standBike } from '../../src/core/riding/stand-bike.ts';
import { DEMO_BIKES } from '../../src/document/demos/demo-bikes.ts';
import { benchTable } from './bench-table.ts';

/** Goal for a million combinations, ms: a tuner waits so long once, with the best so far in sight. */
const GOAL_MS = 10_000;

/** Parts that are kept and combinations that are left as soon as one target is missed have to save this much at least. */
const GOAL_RATIO = 3;

/** Combinations stood in full. */
const STOOD = 4_000;

const [{ bike, setup }] = DEMO_BIKES;

/** Most combinations are stopped by the geometry of a bike whose wheels hang. */
const byGeometry = (short: boolean): Problem => ({
  bike,
  setup,
  targets: [
    { reading: 'swingarmAngle', state: 'toppedOut', want: { kind: 'value', value: 11 } },
    { reading: 'trail', state: 'riderUp', want: { kind: 'keep' } },
    { reading: 'antiSquat', state: 'accelerating', want: { kind: 'window', least: 90, most: 130 } },
  ],
  choices: [
    { adjuster: 'shockLength', available: true, least: -8, most: 8.5 },
    { adjuster: 'forkTubes', available: true, least: 0, most: 20 },
    { adjuster: 'clampOffset', available: true, least: 26, most: 34 },
    { adjuster: 'rearTeeth', available: true, least: 38, most: short ? 38 : 46 },
    { adjuster: 'axlePosition', available: true, least: 10, most: short ? 10.9 : 18.9 },
  ],
});

/** Each combination has to come to rest on its springs before anything can be said of it. */
const bySprings = (short: boolean): Problem => ({
  bike,
  setup,
  targets: [
    { reading: 'rake', state: 'riderUp', want: { kind: 'keep' } },
    { reading: 'trail', state: 'riderUp', want: { kind: 'keep' } },
    { reading: 'antiSquat', state: 'accelerating', want: { kind: 'atLeast' } },
  ],
  choices: [
    { adjuster: 'shockPreload', available: true, least: 0, most: short ? 3 : 15 },
    { adjuster: 'forkTubes', available: true, least: 0, most: 20 },
    { adjuster: 'forkPreload', available: true, least: 0, most: short ? 3 : 15 },
    { adjuster: 'shockLength', available: true, least: -8, most: 8 },
  ],
});

/** Milliseconds for each combination, as searched by all threads. */
async function searched(
  problem: Problem,
  file: URL,
): Promise<{ readonly each: number; readonly tried: number }> {
  const started = performance.now();
  const alone = planSearch(problem);
  if (!alone.ok) throw new Error(alone.reason);
  const [own, ...others] = sharesFor(threadsFor(alone.total, availableParallelism()));
  const threads = others.map((share) => startShare(file, { problem, share }));
  const search = planSearch(problem, own);
  if (!search.ok) throw new Error(search.reason);
  await searchThrough(
    search,
    threads,
    () => undefined,
    () => search.tried() === search.total,
  );
  const ms = performance.now() - started;
  return { each: ms / search.tried(), tried: search.tried() };
}

/** The same for combinations spread over all, each stood in full in every state and read. */
function stood(problem: Problem): number {
  const prepared = prepare(problem);
  if (!prepared.ok) throw new Error(prepared.reason);
  const { setupAt } = combinations(prepared);
  const apart = Math.max(1, Math.floor(prepared.total / STOOD));
  let count = 0;
  const started = performance.now();
  for (let at = 0; at < prepared.total; at += apart, count += 1)
    for (const { reading, state } of prepared.targets) {
      const on = standBike(bike, setupAt(at), state);
      if (on.ok) metricReading(reading, on);
    }
  return (performance.now() - started) / count;
}

export default async function plan(short: boolean): Promise<string[]> {
  const folder = await bundle({ 'plan-share': join(root, 'src/commands/plan-share.ts') });
  const file = pathToFileURL(join(folder, 'plan-share.js'));
  const rows = [];
  for (const [by, problem] of [
    ['geometry', byGeometry(short)],
    ['springs', bySprings(short)],
  ] as const) {
    const { each, tried } = await searched(problem, file);
    rows.push({
      what: `a million combinations decided by ${by}, from ${tried} tried`,
      figure: 1e6 * each,
      unit: 'ms',
      goal: { most: GOAL_MS },
      peer: { name: 'each stood in full', figure: 1e6 * stood(problem), goal: GOAL_RATIO },
    });
  }
  return benchTable(rows);
}
