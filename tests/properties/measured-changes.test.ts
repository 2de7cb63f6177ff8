/** Holds that the ± of a difference between two setups of one measured bike is what refits scatter by. */
import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { Setup } from '../../src/core/adjusters/setup.ts';
import { measureBike } from '../../src/core/measure/measure-bike.ts';
import type { MeasurePartKey } from '../../src/core/measure/held/measure-parts.ts';
import { measuredChange } from '../../src/core/measure/spread/measured-change.ts';
import type { MeasureRow } from '../../src/core/measure/sheet.ts';
import { READINGS } from '../../src/core/readings/all-readings.ts';
import { standBike } from '../../src/core/riding/stand-bike.ts';
import { QUANTITIES } from '../../src/core/units/all-quantities.ts';
import { DEMO_BIKES } from '../../src/document/demos/demo-bikes.ts';
import { cases } from '../support/cases.ts';
import { CHASSIS, normalNumbers, originOn, trueValues, typedRows } from '../support/measured-sheet.ts';

const [ROAD] = DEMO_BIKES;
const TO: Setup = { ...ROAD.setup, forkTubes: ROAD.setup.forkTubes + 8, frontTeeth: 15 };
const WATCHED = ['rake', 'trail', 'squatAngle', 'upperRunAngle'] as const;
const origin = originOn(ROAD);
const truth = trueValues(origin, 7, 8);

const change = (error: (row: number) => number, stepSd: number) =>
  measuredChange({
    start: ROAD,
    sheet: { gaugeZeroed: true, rows: typedRows(origin, CHASSIS, truth, error) },
    from: ROAD.setup,
    to: TO,
    ride: 'toppedOut',
    stepSd,
  });

/** The change of one refitted bike, by reading. */
function refitted(seed: number): readonly number[] {
  const rows = typedRows(origin, CHASSIS, truth, normalNumbers(seed));
  const found = measureBike({ start: ROAD, sheet: { gaugeZeroed: true, rows }, wanted: null });
  if (!found.ok) throw new Error(found.reason);
  const { frontTyre, rearTyre } = found.setup;
  const read = (setup: Setup): readonly number[] => {
    const stood = standBike(found.bike, { ...setup, frontTyre, rearTyre }, 'toppedOut');
    if (!stood.ok) throw new Error(stood.reason);
    return WATCHED.map((key) => {
      const reading = READINGS.find((each) => each.key === key);
      const value = reading?.read(stood);
      if (reading === undefined || typeof value !== 'number') throw new Error(key);
      return QUANTITIES[reading.quantity].fromCore(value);
    });
  };
  const before = read(ROAD.setup);
  return read(TO).map((value, i) => value - before[i]);
}

const toothRow = (part: MeasurePartKey, figure: string): MeasureRow => ({
  kind: 'toothCount',
  parts: [part],
  state: 'onWheels',
  otherState: null,
  figure,
  unit: '',
  sd: null,
  outOfPlane: 0,
  fromOther: false,
  off: false,
});

it('what is not turned stays as it was counted: the change is that of the counted sprockets', () => {
  const counted = [
    ...typedRows(origin, CHASSIS, truth, () => 0),
    toothRow('frontSprocket', '16'),
    toothRow('rearSprocket', '43'),
  ];
  const changeOn = (start: typeof ROAD, rows: readonly MeasureRow[]) => {
    const to = { ...start.setup, shockLength: start.setup.shockLength + 3 };
    const sheet = { gaugeZeroed: true, rows };
    return measuredChange({ start, sheet, from: start.setup, to, ride: 'toppedOut', stepSd: 0 });
  };
  const onCounted = { ...ROAD, setup: { ...ROAD.setup, frontTeeth: 16, rearTeeth: 43 } };
  const [told, meant] = [changeOn(ROAD, counted), changeOn(onCounted, counted)];
  if (!told.ok || !meant.ok) throw new Error('Both sheets can be measured by.');
  for (const key of ['antiSquat', 'squatAngle', 'upperRunAngle'])
    expect(told.readings[key].value, key).toBeCloseTo(meant.readings[key].value ?? NaN, 9);
  const other = changeOn(
    ROAD,
    typedRows(origin, CHASSIS, truth, () => 0),
  );
  if (!other.ok) throw new Error(other.reason);
  expect(
    Math.abs((other.readings.antiSquat.value ?? 0) - (told.readings.antiSquat.value ?? 0)),
  ).toBeGreaterThan(1e-3);
});

it('refits scatter by the stated u of a difference, which is far smaller than that of the readings', () => {
  const stated = change(() => 0, 0);
  if (!stated.ok) throw new Error(stated.reason);
  const found: (readonly number[])[] = [];
  fc.assert(
    fc.property(fc.noBias(fc.integer({ min: 0, max: 0xffffffff })), (seed) => {
      found.push(refitted(seed));
    }),
    { numRuns: cases(150) },
  );
  // The scatter of n refits is itself sure to 1/√(2n); the long form's 3,000 hold it to 5 %.
  const leeway = Math.max(0.05, 4 / Math.sqrt(2 * found.length));
  for (const [k, key] of WATCHED.entries()) {
    const mean = found.reduce((sum, each) => sum + each[k], 0) / found.length;
    const scatter = Math.sqrt(
      found.reduce((sum, each) => sum + (each[k] - mean) ** 2, 0) / (found.length - 1),
    );
    const { value, u } = stated.readings[key];
    expect([key, Math.abs(scatter / (u ?? NaN) - 1) < leeway]).toEqual([key, true]);
    expect(Math.abs(mean - (value ?? NaN))).toBeLessThan(scatter);
  }
  expect(stated.readings.trail.u).toBeLessThan(0.05);
});

it('a step unsure by 0.2 mm adds what it does, and exact teeth add nothing', () => {
  const exact = change(() => 0, 0);
  const unsure = change(() => 0, 0.2);
  if (!exact.ok || !unsure.ok) throw new Error('no change');
  const more = { ...ROAD.setup, forkTubes: TO.forkTubes + 0.2, frontTeeth: 15 };
  const further = measuredChange({
    start: ROAD,
    sheet: { gaugeZeroed: true, rows: typedRows(origin, CHASSIS, truth) },
    from: TO,
    to: more,
    ride: 'toppedOut',
    stepSd: 0,
  });
  if (!further.ok) throw new Error(further.reason);
  const own = exact.readings.trail.u ?? NaN;
  const step = further.readings.trail.value ?? NaN;
  expect(unsure.readings.trail.u).toBeCloseTo(Math.hypot(own, step), 4);
  expect(unsure.readings.finalDriveRatio.u).toBe(0);
});

it('what depends on springs or on a centre of gravity that nobody measured is not fixed', () => {
  const found = change(() => 0, 0);
  if (!found.ok) throw new Error(found.reason);
  expect(found.readings.rake.fixed).toBe(true);
  for (const key of ['antiSquat', 'centreHeight', 'frontWheelRate'])
    expect([key, found.readings[key].fixed]).toEqual([key, false]);
});
