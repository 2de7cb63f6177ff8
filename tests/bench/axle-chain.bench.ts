/** How long it takes to put the axle where a chain of so many links leaves it. */
import { chainLoop } from '../../src/core/drive/chain-loop.ts';
import { axleForChain, type AxleSlot } from '../../src/core/standing/axle-in-slot.ts';
import { chainsThatFit } from '../support/chains-that-fit.ts';
import { machine } from '../../src/core/standing/machine.ts';
import { plainBike, plainSetup } from '../support/plain-bike.ts';
import { timer } from '../support/timed.ts';
import { benchTable, type BenchRow } from './bench-table.ts';

/** Goal for one axle place, µs: it is found anew with every step of a drag. */
const GOAL_US = 10;

export default function axleChain(short: boolean): string[] {
  const { timed } = timer(short);
  const parts = machine(plainBike, plainSetup);
  if (!parts.ok) throw new Error(parts.reason);
  const loop = chainLoop(15, 45, 15.875);
  const rows: BenchRow[] = [];
  for (const slack of [0, 30]) {
    const slot: AxleSlot = { slot: 30, slack, rearTravel: 0, rule: { halfLink: false } };
    const fits = chainsThatFit(parts, loop, slot);
    if (!Array.isArray(fits) || fits.length === 0) throw new Error('no chain fits');
    const us = timed((i) => {
      const place = axleForChain(parts, loop, { ...slot, rearTravel: (i % 20) / 10 }, fits[0]);
      return place.axlePosition ?? 0;
    });
    rows.push({
      what: `axle for a chain with ${slack} mm of slack`,
      figure: us,
      unit: 'µs',
      goal: { most: GOAL_US },
    });
  }
  return benchTable(rows);
}
