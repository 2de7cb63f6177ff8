/** Tests of the rear suspension as one relation. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import '../../../tests/support/cases.ts';
import { plainBike } from '../../../tests/support/plain-bike.ts';
import type { Swingarm } from '../parts/bike.ts';
import { radians } from '../units/convert.ts';
import { monotoneCurve } from '../numeric/monotone-curve.ts';
import {
  armPosition,
  rearSuspension,
  tableCurve,
  tableStroke,
  type ArmPosition,
  type RearSuspension,
} from './rear-suspension.ts';

const { swingarm } = plainBike;

function rear(arm: Swingarm = swingarm, shockLength = 0, axlePosition = 0): RearSuspension {
  const made = rearSuspension(arm, arm.length, shockLength, axlePosition);
  if (!made.ok) throw new Error(made.reason);
  return made;
}

function at(suspension: RearSuspension, travel: number): ArmPosition {
  const arm = armPosition(suspension, travel);
  if (!arm.ok) throw new Error(arm.reason);
  return arm;
}

describe('the arm', () => {
  it('hangs at its topped-out angle with the shock as delivered', () => {
    expect(at(rear(), 0).angle).toBeCloseTo(radians(9.5), 14);
    expect(at(rear(), 0).shockStroke).toBe(0);
  });

  it('takes the shock stroke of each row of its table', () => {
    for (const row of swingarm.travelTable)
      expect(at(rear(), row.wheelTravel).shockStroke).toBeCloseTo(row.shockStroke, 9);
  });

  it('lifts the axle by the travel used, square to the ground', () => {
    const rise = (travel: number) => -swingarm.length * Math.sin(at(rear(), travel).angle);
    expect(rise(75) - rise(0)).toBeCloseTo(75, 10);
  });

  it('counts travel square to the ground as the frame stood when the table was measured', () => {
    const pitched = rear({ ...swingarm, tablePitchDeg: 3 });
    const rise = (travel: number) => {
      const { angle } = at(pitched, travel);
      return -swingarm.length * Math.sin(angle + radians(3));
    };
    expect(at(pitched, 0).angle).toBeCloseTo(radians(9.5), 13);
    expect(rise(60) - rise(0)).toBeCloseTo(60, 10);
  });

  it('has the motion ratio that differences of stroke over rise find, at any axle place', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 120, noNaN: true }),
        fc.double({ min: -8, max: 8, noNaN: true }),
        fc.double({ min: 0, max: 30, noNaN: true }),
        (travel, shockLength, axlePosition) => {
          const suspension = rear(swingarm, shockLength, axlePosition);
          const h = 1e-4;
          const stroke = (by: number) => at(suspension, travel + by).shockStroke;
          const difference = (stroke(h) - stroke(-h)) / (2 * h);
          expect(at(suspension, travel).motionRatio).toBeCloseTo(difference, 4);
        },
      ),
    );
  });
});

describe('the shock length', () => {
  it('lets the arm hang lower when longer and higher when shorter', () => {
    expect(at(rear(swingarm, 4), 0).angle).toBeGreaterThan(radians(9.5));
    expect(at(rear(swingarm, -4), 0).angle).toBeLessThan(radians(9.5));
  });

  it('shorter by a row’s stroke hangs the arm where that row was measured', () => {
    const row = swingarm.travelTable[1];
    const short = at(rear(swingarm, -row.shockStroke), 0);
    expect(short.angle).toBeCloseTo(at(rear(), row.wheelTravel).angle, 12);
    expect(short.shockStroke).toBeCloseTo(0, 12);
  });
});

describe('the axle further back in its slot', () => {
  it('makes the arm longer and leaves the hanging angle', () => {
    const back = rear(swingarm, 0, 12);
    expect(back.arm).toBe(swingarm.length + 12);
    expect(at(back, 0).angle).toBeCloseTo(radians(9.5), 14);
  });

  it('needs less stroke of the shock for the same rise of the axle', () => {
    expect(at(rear(swingarm, 0, 25), 60).shockStroke).toBeLessThan(at(rear(), 60).shockStroke);
  });
});

describe('a rear suspension is refused', () => {
  const refusal = (arm: Partial<Swingarm>, shockLength = 0, axlePosition = 0) => {
    const made = rearSuspension({ ...swingarm, ...arm }, swingarm.length, shockLength, axlePosition);
    return made.ok ? 'made' : made.reason;
  };

  it('when its table cannot be used', () => {
    expect(refusal({ travelTable: [] })).toBe('travelTableUnusable');
    expect(refusal({ travelTable: [{ wheelTravel: 0, shockStroke: 0 }] })).toBe('travelTableUnusable');
    expect(refusal({ travelTable: [...swingarm.travelTable].reverse() })).toBe('travelTableUnusable');
  });

  it('when the arm would hang upright or has no length', () => {
    expect(refusal({ toppedOutAngleDeg: 88 })).toBe('swingarmCannotReach');
    expect(refusal({}, 400)).toBe('swingarmCannotReach');
    expect(refusal({}, 0, -580)).toBe('swingarmCannotReach');
  });

  it('when travel takes the axle over the top', () => {
    expect(armPosition(rear(), 700)).toMatchObject({ ok: false, reason: 'swingarmCannotReach', found: 700 });
  });
});

describe('a table with a ± at its rows', () => {
  const within = swingarm.travelTable.map((row) => ({
    ...row,
    wheelTravelPlusMinus: 0.5,
    shockStrokePlusMinus: 0.25,
  }));

  it('hangs with the shock at its full length and closes at the stroke of its own curve', () => {
    const measured = rear({ ...swingarm, travelTable: within });
    expect(at(measured, 0).shockStroke).toBe(0);
    const last = within[within.length - 1];
    expect(at(measured, last.wheelTravel).shockStroke).toBeCloseTo(tableStroke(within), 9);
    expect(Math.abs(tableStroke(within) - last.shockStroke)).toBeLessThan(1);
  });

  it('reads exactly as ever without one, or with a ± of nothing', () => {
    const rows = swingarm.travelTable;
    const ever = monotoneCurve(rows.map(({ wheelTravel: x, shockStroke: y }) => ({ x, y })));
    if (!ever.ok) throw new Error(ever.reason);
    const nothing = rows.map((row) => ({ ...row, wheelTravelPlusMinus: 0, shockStrokePlusMinus: 0 }));
    for (const table of [rows, nothing]) {
      expect(tableCurve(table)).toEqual({ curve: ever.value, measured: null });
      expect(tableStroke(table)).toBe(rows[rows.length - 1].shockStroke);
    }
  });

  it('is refused where it falls', () => {
    const falls = within.map((row, i) => (i === 2 ? { ...row, shockStroke: 1 } : row));
    expect(rearSuspension({ ...swingarm, travelTable: falls }, swingarm.length, 0, 0)).toMatchObject({
      ok: false,
      reason: 'travelTableUnusable',
    });
  });
});
