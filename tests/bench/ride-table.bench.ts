/** How long the whole table of the Ride panel takes: seven states of the bike and seven of its baseline. */
import { rideFigures, rideTable, type RideRow } from '../../src/core/effects/ride-table.ts';
import type { RideState } from '../../src/core/riding/ride-state.ts';
import type { Travel } from '../../src/core/standing/stance.ts';
import { DEMO_BIKES } from '../../src/document/demo-bikes.ts';
import { timed } from '../support/timed.ts';

/** Goal for the whole table, µs: a small part of a frame of 16 ms. */
const GOAL_US = 1500;

function read(rows: readonly RideRow[]): number {
  return rows.reduce((sum, { found }) => sum + (found.ok ? rideFigures(found).frontUsed : 0), 0);
}

export default function rideTables(): string[] {
  const [{ bike, setup }] = DEMO_BIKES;
  // Another height at every call, so that nothing can be remembered.
  const turned = (i: number) => ({ ...setup, shockLength: (i % 200) * 0.02 });
  const cold = timed((i) => read(rideTable(bike, turned(i))) + read(rideTable(bike, setup)));
  const near: Partial<Record<RideState, Travel>> = {};
  for (const { state, found } of rideTable(bike, setup)) if (found.ok) near[state] = found.travel;
  const warm = timed(
    (i) => read(rideTable(bike, turned(i), (state) => near[state])) + read(rideTable(bike, setup)),
  );
  const line = (name: string, microseconds: number): string =>
    `${name.padEnd(64)} ${microseconds.toFixed(0).padStart(10)} µs  goal ${GOAL_US} µs: ${microseconds <= GOAL_US ? 'met' : 'MISSED'}`;
  return [
    line('Ride panel: 7 states of the bike and 7 of the baseline', cold),
    line('the same, begun from where each state rested last', warm),
  ];
}
