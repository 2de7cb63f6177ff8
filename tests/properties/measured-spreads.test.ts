/** Holds what is said to be unsure about a measured bike: its points, its curves, and its readings among bikes drawn by lot. */
import { describe, expect, it } from 'vitest';
import { CHASSIS, originOn, trueValues, typedRows } from '../support/measured-sheet.ts';
import { DEMO_BIKES } from '../../src/document/demos/demo-bikes.ts';
import { normalNumbers } from '../../src/core/numeric/normal-numbers.ts';
import { READINGS } from '../../src/core/readings/all-readings.ts';
import { drawnRange } from '../../src/core/measure/drawn-bikes.ts';
import { fitSheet } from '../../src/core/measure/fit-sheet.ts';
import type { Fit } from '../../src/core/measure/fit-values.ts';
import { measuredBand } from '../../src/core/measure/measured-band.ts';
import { measuredPlaces } from '../../src/core/measure/measured-places.ts';
import { measuredReadings, readValues } from '../../src/core/measure/measured-readings.ts';
import type { MeasureRow } from '../../src/core/measure/sheet.ts';

const [start] = DEMO_BIKES;
const origin = originOn(start);
const truth = trueValues(origin, 3, 3);

function fitOf(rows: readonly MeasureRow[]): Fit {
  const fitted = fitSheet(start, { gaugeZeroed: true, rows: typedRows(origin, rows, truth) });
  if (!fitted.ok) throw new Error(fitted.reason);
  return fitted.fit;
}

const fit = fitOf(CHASSIS);

describe('the points of a measured bike', () => {
  it('stand as surely as the readings they make: the front axle along as the wheelbase', () => {
    const places = measuredPlaces(fit);
    const front = places.find(({ key }) => key === 'frontAxle');
    expect(Math.sqrt(front?.along ?? NaN)).toBeCloseTo(measuredReadings(fit)?.wheelbase.u ?? NaN, 6);
    const rear = places.find(({ key }) => key === 'rearAxle');
    expect(rear?.along).toBeCloseTo(0, 9);
    for (const { along, up, both } of places) expect(both ** 2).toBeLessThanOrEqual(along * up + 1e-9);
  });

  it('that no row has reached are left out', () => {
    const keys = measuredPlaces(fitOf(CHASSIS.slice(0, 5))).map(({ key }) => key);
    expect(keys).toContain('frontAxle');
    expect(keys).not.toContain('steeringHead');
    expect(keys).not.toContain('seat');
  });
});

describe('a curve of a measured bike', () => {
  const along = (rows: Fit, reading: string) =>
    measuredBand(rows, {
      start,
      reading,
      ride: 'riderUp',
      places: [0, 40, 80].map((rear) => ({ setup: start.setup, travel: { front: 20, rear } })),
    });

  it('has a ± at each travel, and none where it hangs on what no row fixes', () => {
    for (const u of along(fit, 'trail')) expect(u).toBeGreaterThan(0.5);
    expect(along(fit, 'antiSquat')).toEqual([null, null, null]);
    expect(along(fitOf(CHASSIS.slice(0, 19)), 'rake')).toEqual([null, null, null]);
  });

  it('over an adjuster is not fixed in a state that springs carry, whose rates nobody measured', () => {
    const places = [{ setup: start.setup, travel: null }];
    expect(measuredBand(fit, { start, reading: 'rake', ride: 'riderUp', places })).toEqual([null]);
    const [hanging] = measuredBand(fit, { start, reading: 'rake', ride: 'toppedOut', places });
    expect(hanging).toBeGreaterThan(0);
  });
});

describe('bikes drawn by lot', () => {
  it('read by a surface as they read when each is stood', () => {
    const [trail] = READINGS.filter(({ key }) => key === 'trail');
    const normal = normalNumbers(7);
    const { values, touched, parts, rank } = fit;
    const stood = Array.from({ length: 1500 }, () => {
      const drawn = [...values];
      for (let k = 0; k < rank; k++) {
        const step = normal() / parts.values[k];
        for (const [j, place] of touched.entries()) drawn[place] += step * parts.right[k][j];
      }
      return readValues(origin, drawn, [trail])?.[0] ?? NaN;
    }).sort((a, b) => a - b);
    const range = drawnRange(fit, { reading: 'trail', count: 1500 }, normalNumbers(7));
    const width = stood[1462] - stood[37];
    expect(Math.abs((range?.least ?? NaN) - stood[37])).toBeLessThan(0.01 * width);
    expect(Math.abs((range?.most ?? NaN) - stood[1462])).toBeLessThan(0.01 * width);
  });

  it('lie in 95 of 100 within the stated ± of a reading that bends little', () => {
    const { value, u } = measuredReadings(fit)?.wheelbase ?? { value: NaN, u: NaN };
    const range = drawnRange(fit, { reading: 'wheelbase', count: 10_000 }, normalNumbers(1));
    expect(((range?.most ?? NaN) - (range?.least ?? NaN)) / (2 * 1.96 * (u ?? NaN))).toBeCloseTo(1, 1);
    expect(Math.abs((range?.middle ?? NaN) - (value ?? NaN))).toBeLessThan(0.05 * (u ?? NaN));
  });
});
