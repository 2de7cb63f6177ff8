/** Holds that sheets of measurements find the bike they were taken from, and say honestly how well. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { measureBike } from '../../src/core/measure/measure-bike.ts';
import type { MeasuredBike } from '../../src/core/measure/measured-bike.ts';
import type { StartingBike } from '../../src/core/measure/held/starting-bike.ts';
import { readValues } from '../../src/core/measure/measured-readings.ts';
import { MEASURE_KINDS, measureKindOf } from '../../src/core/measure/kinds/all-kinds.ts';
import { MEASURE_PARTS, type MeasurePartKey } from '../../src/core/measure/held/measure-parts.ts';
import { rowFigures } from '../../src/core/measure/row-figures.ts';
import type { MeasureRow } from '../../src/core/measure/sheet.ts';
import { READINGS } from '../../src/core/readings/all-readings.ts';
import { standBike } from '../../src/core/riding/stand-bike.ts';
import { QUANTITIES } from '../../src/core/units/all-quantities.ts';
import { DEMO_BIKES } from '../../src/document/demos/demo-bikes.ts';
import { cases } from '../support/cases.ts';
import {
  asked,
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

describe('a sheet without rows', () => {
  it.each(DEMO_BIKES)('leaves $bike.name as it is, in every reading', (start) => {
    const found = measured(start, []);
    const empty = { ...start.setup, riderMass: 0, passengerMass: 0, loadMass: 0 };
    const stood = standBike(start.bike, empty, 'noRider');
    if (!stood.ok) throw new Error(stood.reason);
    const unsprung = { ...stood, equilibrium: undefined, sprung: undefined };
    let compared = 0;
    for (const { key, quantity, read } of READINGS) {
      // A sheet knows no springs that a lean could press, so its bike touches at the travel that it was measured at.
      const value = read(key === 'touchLean' ? unsprung : stood);
      const { value: here, fixed } = found.readings[key];
      // At a travel set by hand the springs carry nothing, and loads have no number.
      if (typeof value !== 'number' || here === null) continue;
      const there = QUANTITIES[quantity].fromCore(value);
      expect([key, Math.abs(here - there) < 1e-8 * (1 + Math.abs(there))]).toEqual([key, true]);
      if (key !== 'finalDriveRatio') expect([key, fixed]).toEqual([key, false]);
      compared++;
    }
    expect(compared).toBeGreaterThan(30);
  });
});

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

  it.each([6, 10])(
    'an arm that hangs %d° lower than on the starting bike takes the assumed links along',
    (lower) => {
      const start = DEMO_BIKES[1];
      const origin = originOn(start);
      const hanging = origin.places.get('arm:hanging');
      const truth = origin.unknowns.map(({ start: from }, place) =>
        place === hanging ? from + (lower * 1000 * Math.PI) / 180 : from,
      );
      const { status, readings } = measured(start, typedRows(origin, CHASSIS, truth));
      const stood = measured(start, typedRows(origin, CHASSIS, trueValues(origin, 0, 0))).readings;
      expect(status).toBe('solved');
      for (const key of ['rake', 'trail', 'wheelbase', 'swingarmAngle'])
        expect([key, Math.abs((readings[key].value ?? NaN) - (stood[key].value ?? NaN)) < 1e-6]).toEqual([
          key,
          true,
        ]);
    },
  );

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
      { numRuns: cases(3, 200) },
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

describe('slips', () => {
  it('one as large as the others reveal is named first, alone or with the row it cannot be told apart from', () => {
    const bikes = DEMO_BIKES.map((start) => {
      const origin = originOn(start);
      const truth = trueValues(origin, 7, 10);
      return { start, origin, truth, clean: measured(start, typedRows(origin, CHASSIS, truth)) };
    });
    const checked = bikes.flatMap(({ clean }, bike) =>
      clean.rows.flatMap(({ smallestSlipRevealed: slip }, at) => (slip === null ? [] : [{ bike, at, slip }])),
    );
    expect(checked.length).toBeGreaterThan(60);
    let named = 0;
    let all = 0;
    fc.assert(
      fc.property(seeds, fc.constantFrom(...checked), fc.boolean(), (seed, { bike, at, slip }, up) => {
        const { start, origin, truth, clean } = bikes[bike];
        const noise = normalNumbers(seed);
        const errors = CHASSIS.map(() => noise());
        errors[at] += ((up ? 1 : -1) * slip) / clean.rows[at].sd;
        const found = measured(
          start,
          typedRows(origin, CHASSIS, truth, (row) => errors[row]),
        );
        const { suspected } = found.rows[at];
        all++;
        if (suspected?.place === 1) named++;
      }),
      { numRuns: cases(40) },
    );
    // The long form draws 800 slips, and holds them to 95 %.
    expect(named / all).toBeGreaterThanOrEqual(0.95 - 2 * Math.sqrt((0.95 * 0.05) / all));
  });

  it('one that two rows explain nearly as well is named in both', () => {
    const origin = originOn(ROAD);
    const truth = trueValues(origin, 7, 10);
    const at = CHASSIS.findIndex(({ kind, parts }) => kind === 'axleHeight' && parts[0] === 'frontWheel');
    // With this noise the tyre's circumference alone would take the blame for its axle's height.
    const noise = normalNumbers(14);
    const errors = CHASSIS.map((_, row) => noise() + (row === at ? 6.7 : 0));
    const { rows } = measured(
      ROAD,
      typedRows(origin, CHASSIS, truth, (row) => errors[row]),
    );
    expect(rows.flatMap(({ suspected }, row) => (suspected?.place === 1 ? [row] : []))).toEqual([0, at]);
    expect(rows[0].suspected?.alike).toEqual([at]);
    expect(rows[at].suspected?.alike).toEqual([0]);
  });

  it.each([
    [4, (figure: number) => figure / 25.4, 'inchForMm'],
    [2, (figure: number) => figure / 10, 'cmForMm'],
    [0, (figure: number) => figure / 25.4, 'inchForMm'],
    [23, (figure: number) => 90 - figure, 'otherReference'],
  ] as const)(
    'row %d in another unit or from another reference is recognised by its size',
    (at, turn, likely) => {
      const origin = originOn(ROAD);
      const rows = [...typedRows(origin, CHASSIS, trueValues(origin, 11, 10), normalNumbers(3))];
      rows[at] = { ...rows[at], figure: turn(Number(rows[at].figure)).toFixed(6) };
      const found = measureBike({ start: ROAD, sheet: { gaugeZeroed: true, rows }, wanted: null });
      const suspected = found.ok ? found.rows[at].suspected : (found.suspected ?? null);
      if (found.ok) expect(found.status).toBe('disagrees');
      else expect(found.row).toBe(at);
      expect(suspected?.place).toBe(1);
      expect(suspected?.likely).toBe(likely);
    },
  );
});

describe('what no row fixes', () => {
  it('moves along the named directions without changing any row', () => {
    const origin = originOn(ROAD);
    const few = CHASSIS.filter((_, i) => ![9, 10, 12, 15, 17].includes(i));
    const truth = trueValues(origin, 5, 8);
    const rows = typedRows(origin, few, truth);
    const found = measured(ROAD, rows);
    expect(found.status).toBe('notFixed');
    const free = found.notFixed.filter(({ why }) => why === 'rank');
    expect(free.length).toBeGreaterThan(0);
    const values = found.unknowns.map(({ unit, value }) =>
      unit === '°' ? (value * 1000 * Math.PI) / 180 : value,
    );
    const kinds = rows.map((row) => ({ kind: measureKindOf(row.kind), row }));
    const step = 1e-3;
    for (const { moves } of free) {
      const by = (sign: number) =>
        values.map((value, i) => {
          const move = moves.find(({ key }) => key === found.unknowns[i].key);
          return value + sign * step * (move?.part ?? 0);
        });
      const ahead = rowFigures(origin, kinds, by(1));
      const back = rowFigures(origin, kinds, by(-1));
      for (const [i, { kind }] of kinds.entries())
        expect(Math.abs((ahead?.[i] ?? NaN) - (back?.[i] ?? NaN)) / (2 * step * kind.sd)).toBeLessThan(1e-6);
      expect(moves.length).toBeGreaterThan(0);
    }
    // A reading that hangs on such a direction says so.
    expect(found.readings.frontSprocketHeight.fixed).toBe(false);
    expect(found.readings.wheelbase.fixed).toBe(true);
  });
});

describe('the next measurement', () => {
  it('is within 1 % of the best of all by brute force', () => {
    const origin = originOn(ROAD);
    const truth = trueValues(origin, 9, 8);
    const rows = typedRows(origin, CHASSIS, truth, normalNumbers(2));
    const { next } = measured(ROAD, rows, 'trail');
    expect(next).toHaveLength(5);
    let best = Infinity;
    let first = Infinity;
    let tried = 0;
    for (const kind of MEASURE_KINDS)
      for (const parts of PARTS_TO_TRY.filter((each) => each.length === kind.takes.length)) {
        const row = asked(kind.key, parts);
        const shapes = parts.every((part, i) => kind.takes[i].includes(MEASURE_PARTS[part].shape));
        if (!shapes || kind.read !== 'number' || kind.betweenStates || kind.state === 'makersPosture')
          continue;
        for (const state of ['onWheels', 'bothHanging'] as const) {
          if (kind.quantity === 'mass' && state !== 'onWheels') continue;
          const here = { ...row, state };
          const [more] = typedRows(origin, [here], truth);
          const { u } = measured(ROAD, [...rows, more]).readings.trail;
          if (u !== null && u < best) best = u;
          tried++;
          const [top] = next;
          if (top.kind === kind.key && top.state === state && String(top.parts) === String(parts))
            first = u ?? Infinity;
        }
      }
    expect(tried).toBeGreaterThan(40);
    expect(first).toBeLessThan(best * 1.01);
    expect(Math.abs((next[0].u ?? NaN) / first - 1)).toBeLessThan(0.01);
  }, 120_000);
});

/** Parts of the front and the pivot, where trail is decided. */
const PARTS_TO_TRY: readonly (readonly MeasurePartKey[])[] = [
  [],
  ['forkLeg'],
  ['swingarm'],
  ['frontWheel'],
  ['rearWheel'],
  ['frontAxle'],
  ['steeringHead'],
  ['pivot'],
  ['frontAxle', 'steeringHead'],
  ['pivot', 'frontAxle'],
  ['pivot', 'steeringHead'],
  ['rearAxle', 'steeringHead'],
  ['rearAxle', 'frontAxle'],
];
