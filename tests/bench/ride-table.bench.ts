/** How long the whole table of the Ride panel takes: every state of the bike and of its baseline. */
import { rideFigures, rideTable, type RideRow } from '../../src/core/effects/ride-table.ts';
import type { RideStateKey } from '../../src/core/riding/states/all-ride-states.ts';
import type { Travel } from '../../src/core/standing/stance.ts';
import { DEMO_BIKES } from '../../src/document/demos/demo-bikes.ts';
import { timer } from '../support/timed.ts';
import { benchTable, type BenchRow } from './bench-table.ts';

/** Goal for the whole table, µs: a small part of a frame of 16 ms. */
const GOAL_US = 1500;

function read(rows: readonly RideRow[]): number {
  return rows.reduce((sum, { found }) => sum + (found.ok ? rideFigures(found).frontUsed : 0), 0);
}

export default function rideTables(short: boolean): string[] {
  const { timed } = timer(short);
  const [{ bike, setup }] = DEMO_BIKES;
  // Another height at every call, so that nothing can be remembered.
  const turned = (i: number) => ({ ...setup, shockLength: (i % 200) * 0.02 });
  const cold = timed((i) => read(rideTable(bike, turned(i))) + read(rideTable(bike, setup)));
  const near: Partial<Record<RideStateKey, Travel>> = {};
  for (const { state, found } of rideTable(bike, setup)) if (found.ok) near[state] = found.travel;
  const warm = timed(
    (i) => read(rideTable(bike, turned(i), (state) => near[state])) + read(rideTable(bike, setup)),
  );
  const row = (what: string, figure: number): BenchRow => ({
    what,
    figure,
    unit: 'µs',
    goal: { most: GOAL_US },
  });
  return benchTable([
    row('Ride panel: every state of the bike and of the baseline', cold),
    row('the same, begun from where each state rested last', warm),
  ]);
}
