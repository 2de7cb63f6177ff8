/** How long a curve of 201 places takes for four setups together, against travel and against an adjuster. */
import { curveAlong, type SweepAxis } from '../../src/core/effects/sweep.ts';
import { antiSquat } from '../../src/core/readings/anti-squat.ts';
import { plainBike, plainSetup } from '../support/plain-bike.ts';
import { timer } from '../support/timed.ts';
import { benchTable, type BenchRow } from './bench-table.ts';

/** Goal for 201 places and four setups, ms. */
const GOAL_MS = 10;
const PLACES = 201;

const AXES: readonly { name: string; axis: SweepAxis; from: number; to: number }[] = [
  { name: 'rear travel', axis: { kind: 'travel', end: 'rear' }, from: 0, to: 130 },
  { name: 'both travels', axis: { kind: 'travel', end: 'both', frontPerRear: 0.9 }, from: 0, to: 130 },
  { name: 'shock length', axis: { kind: 'adjuster', adjuster: 'shockLength' }, from: -15, to: 15 },
];

export default function sweeps(short: boolean): string[] {
  const { timed } = timer(short);
  const rows = AXES.map(({ name, axis, from, to }): BenchRow => {
    const curves = (i: number) =>
      [14, 15, 16, 17].map((frontTeeth) => {
        const setup = { ...plainSetup, frontTeeth, forkTubes: (i % 100) / 10 };
        const travel = { front: 40, rear: 40 };
        return curveAlong({ bike: plainBike, setup, travel, axis, from, to, count: PLACES }, antiSquat);
      });
    const stood = curves(0).reduce((sum, curve) => sum + curve.y.length, 0);
    if (stood !== 4 * PLACES) throw new Error(`Only ${stood} places stand`);
    const ms = timed((i) => curves(i)[0].x[0]) / 1000;
    return {
      what: `anti-squat against ${name}, ${PLACES} places × 4 setups`,
      figure: ms,
      unit: 'ms',
      goal: { most: GOAL_MS },
    };
  });
  return benchTable(rows);
}
