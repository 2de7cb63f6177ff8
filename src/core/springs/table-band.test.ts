/** Tests of how well a measured table tells ratio and rate: by the spread of many tables that the rows may have been. */
import { expect, it } from 'vitest';
import { plainBike, plainSetup, withSwingarm } from '../../../tests/support/plain-bike.ts';
import type { Bike } from '../parts/bike.ts';
import type { Setup } from '../adjusters/setup.ts';
import { machine } from '../standing/machine.ts';
import { sprungMachine } from './sprung-machine.ts';
import { tableBand, type TableBand } from './table-band.ts';

const within = (wheel: number, shock: number): Bike =>
  withSwingarm(plainBike, {
    travelTable: plainBike.swingarm.travelTable.map((row) => ({
      ...row,
      wheelTravelPlusMinus: wheel,
      shockStrokePlusMinus: shock,
    })),
  });

const sprungSetup: Setup = { ...plainSetup, forkSpringRate: 9, shockSpringRate: 95, shockPreload: 8 };

function bandOf(bike: Bike, setup: Setup): TableBand | null {
  const made = machine(bike, setup);
  if (!made.ok) throw new Error(made.reason);
  const sprung = sprungMachine(made);
  return tableBand(made, bike.swingarm.travelTable, sprung.ok ? sprung : null);
}

it('has none for rows that are exact', () => {
  expect(bandOf(plainBike, sprungSetup)).toBeNull();
});

it('knows the ratio alone while there is no spring', () => {
  const band = bandOf(within(0.5, 0.25), { ...plainSetup, shockSpringRate: 0 });
  expect(band?.rate).toBeNull();
  expect(band?.ratio.most).toBeGreaterThan(0);
});

it('is wider with a larger ±, and for the rate than for the ratio', () => {
  const fine = bandOf(within(0.5, 0.25), sprungSetup);
  const rough = bandOf(within(2, 1), sprungSetup);
  if (fine?.rate === null || rough?.rate === null || fine === null || rough === null)
    throw new Error('no band');
  for (const figure of ['ratio', 'rate'] as const) {
    const [a, b] = [fine[figure], rough[figure]];
    if (a === null || b === null) throw new Error('no band');
    expect(a.mean).toBeLessThanOrEqual(a.most);
    expect(b.mean).toBeGreaterThan(1.2 * a.mean);
  }
  expect(fine.rate.most).toBeGreaterThan(fine.ratio.most);
});

it('stays the same part of the ratio with the axle back in its slot', () => {
  const bike = within(0.5, 0.25);
  const [front, back] = [0, 20].map((axlePosition) => bandOf(bike, { ...plainSetup, axlePosition }));
  expect(back?.ratio.most).toBeCloseTo(front?.ratio.most ?? 0, 12);
});
