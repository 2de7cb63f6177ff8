/** Tests of the curve of a measured table: what is exact stays exact, the zero's error is shared, and it rises. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cases } from '../../../tests/support/cases.ts';
import type { TravelRow } from '../parts/rear-layout.ts';
import { curveAt, curveInverse } from '../numeric/monotone-curve.ts';
import { isMeasured, measuredCurve, rowOff, spreadAt, type MeasuredCurve } from './measured-curve.ts';

const within = (wheel: number, shock: number) => ({
  wheelTravelPlusMinus: wheel,
  shockStrokePlusMinus: shock,
});

/** A ratio that rises evenly from 0.4 to 0.5 over 100 mm. */
const stroke = (travel: number): number => 0.4 * travel + 0.0005 * travel * travel;

const rows = (count: number, plusMinus: object, zero: object = plusMinus): TravelRow[] =>
  Array.from({ length: count }, (_, i) => {
    const wheelTravel = (100 * i) / (count - 1);
    return { wheelTravel, shockStroke: stroke(wheelTravel), ...(i === 0 ? zero : plusMinus) };
  });

function made(table: readonly TravelRow[]): MeasuredCurve {
  const found = measuredCurve(table);
  if (found === null) throw new Error('no curve');
  return found;
}

const ratioDeviation = (table: readonly TravelRow[], travel: number): number =>
  Math.sqrt(spreadAt(made(table), travel).ratio);

describe('the curve of a measured table', () => {
  it('passes exactly through nothing at nothing, whatever its ±', () => {
    const { curve, spreads } = made(rows(9, within(2, 1)));
    expect(curveAt(curve, 0).value).toBe(0);
    expect(spreads[0].stroke).toBeLessThan(1e-9);
  });

  it('passes through rows that are exact, beside rows that are not', () => {
    const table = rows(9, within(1, 0.5)).map((row, i) =>
      i === 4 ? { wheelTravel: row.wheelTravel, shockStroke: row.shockStroke + 0.2 } : row,
    );
    const { wheelTravel, shockStroke } = table[4];
    expect(curveAt(made(table).curve, wheelTravel).value).toBeCloseTo(shockStroke, 4);
  });

  it('finds an even rise of the ratio', () => {
    const { curve } = made(rows(11, within(0.1, 0.05)));
    for (const travel of [0, 30, 71, 99.9]) {
      const { slope, bend } = curveAt(curve, travel);
      expect(Math.abs(slope - (0.4 + 0.001 * travel))).toBeLessThan(2e-3);
      expect(Math.abs(bend - 0.001)).toBeLessThan(2e-4);
    }
  });

  it('is known better with more rows and with a smaller ±, of either column', () => {
    for (const travel of [0, 50, 100]) {
      expect(ratioDeviation(rows(41, within(0.5, 0.25)), travel)).toBeLessThan(
        ratioDeviation(rows(5, within(0.5, 0.25)), travel),
      );
      const both = ratioDeviation(rows(9, within(0.5, 0.25)), travel);
      expect(ratioDeviation(rows(9, within(0, 0.25)), travel)).toBeLessThan(both);
      expect(ratioDeviation(rows(9, within(0.5, 0)), travel)).toBeLessThan(both);
    }
  });

  it('shares the error of the readings hanging among all rows', () => {
    const exactZero = rows(41, within(0.5, 0.25), {});
    const shared = rows(41, within(0.5, 0.25), within(3, 1.5));
    expect(ratioDeviation(shared, 0)).toBeGreaterThan(1.2 * ratioDeviation(exactZero, 0));
    // A shift of every row by the same 1 mm is then likely to be the zero's.
    const shifted = shared.map((row, i) => (i === 0 ? row : { ...row, shockStroke: row.shockStroke + 1 }));
    expect(Math.abs(curveAt(made(shifted).curve, 50).value - stroke(50))).toBeLessThan(0.5);
  });

  it('rises everywhere and can be read backward, however the rows lie within their ±', () => {
    const column = fc.array(fc.integer({ min: -100, max: 100 }), { minLength: 20, maxLength: 20 });
    fc.assert(
      fc.property(column, column, fc.integer({ min: 3, max: 20 }), (wheels, shocks, count) => {
        const table = rows(count, within(3, 2)).map((row, i) =>
          i === 0
            ? row
            : {
                ...row,
                wheelTravel: row.wheelTravel + (3 * wheels[i]) / 100,
                shockStroke: row.shockStroke + (2 * shocks[i]) / 100,
              },
        );
        const { curve } = made(table);
        for (let travel = -5; travel < 110; travel += 0.7) {
          const { slope, value } = curveAt(curve, travel);
          expect(slope).toBeGreaterThan(0);
          expect(curveInverse(curve, value)).toBeCloseTo(travel, 6);
        }
      }),
      { numRuns: cases(50) },
    );
  });

  it('has slope and bend without jumps', () => {
    const { curve } = made(rows(9, within(1, 0.5)));
    for (const x of curve.x.slice(1, -1)) {
      const [before, after] = [curveAt(curve, x - 1e-9), curveAt(curve, x)];
      expect(after.value).toBeCloseTo(before.value, 7);
      expect(after.slope).toBeCloseTo(before.slope, 9);
      expect(after.bend).toBeCloseTo(before.bend, 9);
    }
  });
});

it('has no curve for rows that fall by more than their ±, nor for figures that are no numbers', () => {
  const falls = rows(5, within(0.5, 0.25)).map((row, i) => (i === 3 ? { ...row, shockStroke: 10 } : row));
  expect(measuredCurve(falls)).toBeNull();
  const tie = rows(5, within(0.5, 0.25)).map((row, i, all) =>
    i === 3 ? { ...row, shockStroke: all[2].shockStroke - 0.2 } : row,
  );
  expect(measuredCurve(tie)).not.toBeNull();
  for (const wrong of [NaN, Infinity, -1]) expect(measuredCurve(rows(5, within(wrong, 0.25)))).toBeNull();
});

it('knows which tables were measured', () => {
  expect(isMeasured(rows(4, {}))).toBe(false);
  expect(isMeasured(rows(4, within(0, 0)))).toBe(false);
  expect(isMeasured(rows(4, within(0, 0.1)))).toBe(true);
});

describe('a row that the others contradict', () => {
  const off = (count: number, at: number, by: number): TravelRow[] =>
    rows(count, within(0.5, 0.25)).map((row, i) =>
      i === at ? { ...row, shockStroke: row.shockStroke + by } : row,
    );

  it('is named with how far it is off, and with what its ± explains', () => {
    for (const [at, by] of [
      [3, 2],
      [6, -2],
    ] as const) {
      const found = rowOff(off(9, at, by));
      expect(found?.row).toBe(at);
      expect(Math.abs((found?.off ?? NaN) - by)).toBeLessThan(0.3);
      expect(found?.within).toBeGreaterThan(0.4);
      expect(found?.within).toBeLessThan(2);
    }
  });

  it('is none among rows that lie within their ±, nor in a table without one', () => {
    const next = (i: number): number => ((i * 7919) % 13) / 6 - 1;
    const rough = rows(11, within(0.5, 0.25)).map((row, i) =>
      i === 0 ? row : { ...row, shockStroke: row.shockStroke + 0.25 * next(i) },
    );
    expect(rowOff(rough)).toBeNull();
    const exact = off(9, 3, 2).map(({ wheelTravel, shockStroke }) => ({ wheelTravel, shockStroke }));
    expect(rowOff(exact)).toBeNull();
  });

  it('is where the curve without it passes', () => {
    const table = off(9, 5, 2);
    const rest = made(table.filter((_, i) => i !== 5));
    const { wheelTravel, shockStroke } = table[5];
    const passed = shockStroke - curveAt(rest.curve, wheelTravel).value;
    expect(Math.abs((rowOff(table)?.off ?? NaN) - passed)).toBeLessThan(0.02);
  });
});
