/** Holds that sheets of measurements find the bike they were taken from, and say honestly how well. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { measureBike } from '../../src/core/measure/measure-bike.ts';
import type { MeasuredBike, StartingBike } from '../../src/core/measure/measured-bike.ts';
import { readValues } from '../../src/core/measure/measured-readings.ts';
import type { MeasureRow } from '../../src/core/measure/sheet.ts';
import { READINGS } from '../../src/core/readings/all-readings.ts';
import { DEMO_BIKES } from '../../src/document/demo-bikes.ts';
import { cases } from '../support/cases.ts';
import {
  CHASSIS,
  LINKS_AND_WEIGHTS,
  normalNumbers,
  originOn,
  trueValues,
  typedRows,
} from '../support/measured-sheet.ts';

const [ROAD] = DEMO_BIKES;
const seeds = fc.integer({ min: 0, max: 0xffffffff });

function measured(
  start: StartingBike,
  rows: readonly MeasureRow[],
  wanted: string | null = null,
): MeasuredBike {
  const found = measureBike({ start, sheet: { gaugeZeroed: true, rows }, wanted });
  if (!found.ok) throw new Error(`row ${found.row}: ${found.reason}`);
  return found;
}

describe('sheets without noise', () => {
  it('25 rows of a chassis find every fixed reading of a random bike to 1e-6', () => {
    let checked = 0;
    fc.assert(
      fc.property(seeds, fc.constantFrom(...DEMO_BIKES), (seed, start) => {
        const origin = originOn(start);
        const truth = trueValues(origin, seed, 15);
        const wanted = readValues(origin, truth, READINGS);
        // A true bike whose fork or arm would reach beyond its travel does not stand.
        fc.pre(wanted !== null);
        const found = measured(start, typedRows(origin, CHASSIS, truth));
        expect(found.status).toBe('solved');
        for (const [i, { key }] of READINGS.entries()) {
          const { value, fixed } = found.readings[key];
          if (!fixed) continue;
          expect(Math.abs((value ?? NaN) - (wanted?.[i] ?? NaN))).toBeLessThan(1e-6);
          checked++;
        }
      }),
      { numRuns: cases(10) },
    );
    expect(checked).toBeGreaterThan(10 * 12);
  });

  it('45 rows find links and weights too', () => {
    let checked = 0;
    fc.assert(
      fc.property(seeds, (seed) => {
        const origin = originOn(ROAD);
        const truth = trueValues(origin, seed, 3);
        const wanted = readValues(origin, truth, READINGS);
        fc.pre(wanted !== null);
        const found = measured(ROAD, typedRows(origin, [...CHASSIS, ...LINKS_AND_WEIGHTS], truth));
        expect(found.agreement.chiSquare).toBeLessThan(1e-6);
        for (const key of ['motionRatio', 'centreHeight', 'antiSquat']) {
          const i = READINGS.findIndex((reading) => reading.key === key);
          expect([key, found.readings[key].fixed]).toEqual([key, true]);
          expect(Math.abs((found.readings[key].value ?? NaN) - (wanted?.[i] ?? NaN))).toBeLessThan(1e-6);
          checked++;
        }
      }),
      { numRuns: cases(3) },
    );
    expect(checked).toBeGreaterThan(3);
  });
});

describe('the stated ±', () => {
  it('holds the truth in 93 to 97 % of refits', () => {
    const origin = originOn(ROAD);
    const truth = trueValues(origin, 7, 10);
    const wanted = readValues(origin, truth, READINGS);
    const watched = ['rake', 'trail', 'wheelbase', 'swingarmAngle', 'squatAngle', 'upperRunAngle'];
    let inside = 0;
    let all = 0;
    fc.assert(
      fc.property(seeds, (seed) => {
        const noise = normalNumbers(seed);
        const found = measured(ROAD, typedRows(origin, CHASSIS, truth, noise));
        for (const key of watched) {
          const { value, u } = found.readings[key];
          const i = READINGS.findIndex((reading) => reading.key === key);
          all++;
          if (Math.abs((value ?? NaN) - (wanted?.[i] ?? NaN)) < 1.96 * (u ?? 0)) inside++;
        }
      }),
      { numRuns: cases(60) },
    );
    // So few refits scatter by some per cent themselves; the long form is held to the narrow band.
    const leeway = 3 * Math.sqrt((0.95 * 0.05) / (all / 3));
    expect(inside / all).toBeGreaterThan(Math.min(0.93, 0.95 - leeway));
    expect(inside / all).toBeLessThan(Math.max(0.97, 0.95 + leeway));
  });
});
