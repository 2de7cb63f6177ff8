/** How long a search for a setup takes over as many combinations as it tries at most. */
import { findPlans } from '../support/find-plans.ts';
import type { Problem } from '../../src/core/plan/problem.ts';
import { DEMO_BIKES } from '../../src/document/demos/demo-bikes.ts';
import { benchTable } from './bench-table.ts';

/** Goal for a million combinations, ms: a tuner waits so long once, with the best so far in sight. */
const GOAL_MS = 10_000;

export default function plan(short: boolean): string[] {
  const [{ bike, setup }] = DEMO_BIKES;
  const problem: Problem = {
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
  };
  const started = performance.now();
  const found = findPlans(problem);
  if (!found.ok) throw new Error(found.reason);
  const ms = performance.now() - started;
  return benchTable([
    {
      what: `a million combinations, from ${found.tried} tried`,
      figure: (1e6 * ms) / found.tried,
      unit: 'ms',
      goal: { most: GOAL_MS },
    },
  ]);
}
