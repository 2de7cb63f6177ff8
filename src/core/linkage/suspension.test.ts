/** Tests of the rear suspension, whether from a table or from links. */
import { describe, expect, it } from 'vitest';
import { plainBike } from '../../../tests/support/plain-bike.ts';
import {
  ARM_LENGTH,
  rockerOnArm,
  rockerToFrame,
  rearLayouts,
  twoShocks,
} from '../../../tests/support/rear-layouts.ts';
import { evenly, madeRear, rearAt } from '../../../tests/support/rear-made.ts';
import { radians } from '../units/convert.ts';
import { AS_DELIVERED, type RearAdjusters } from './link-adjustments.ts';
import type { Layout } from '../parts/rear-layout.ts';
import type { NoLinkage } from './no-linkage.ts';
import { armPosition, rearSuspension } from './rear-suspension.ts';
import { suspension, suspensionAt, withAxleAt } from './suspension.ts';

const { swingarm } = plainBike;
const table: Layout = {
  kind: 'table',
  travelTable: swingarm.travelTable,
  tablePitchDeg: 1.5,
  toppedOutAngleDeg: swingarm.toppedOutAngleDeg,
  wheelTravel: swingarm.wheelTravel,
};

function refused(layout: Layout, change: Partial<RearAdjusters> = {}, length = ARM_LENGTH): NoLinkage {
  const of = suspension(layout, length, { ...AS_DELIVERED, ...change });
  if (of.ok) throw new Error('It is made');
  return of;
}

describe('a table', () => {
  it('says what the plain table says, to the last digit', () => {
    const plain = rearSuspension({ ...swingarm, tablePitchDeg: 1.5 }, swingarm.length, 3, 10);
    if (!plain.ok) throw new Error(plain.reason);
    const of = madeRear(table, { shockLength: 3, axlePosition: 10 });
    for (const travel of evenly(0, 130, 27))
      expect(rearAt(of, travel)).toMatchObject(armPosition(plain, travel));
    expect(of).toMatchObject({ arm: plain.arm, wheelTravel: plain.wheelTravel, endsBy: 'statedTravel' });
  });

  it('ends its stated travel at one stroke of the shock, wherever the axle stands in its slot', () => {
    const front = madeRear(table);
    for (const axlePosition of [5, 12, 30]) {
      const back = madeRear(table, { axlePosition });
      // Similar triangles about the pivot: the axle rises as its distance from it.
      expect(back.wheelTravel).toBeCloseTo((130 * (ARM_LENGTH + axlePosition)) / ARM_LENGTH, 10);
      expect(rearAt(back, back.wheelTravel).shockStroke).toBeCloseTo(rearAt(front, 130).shockStroke, 9);
      expect(withAxleAt(front, axlePosition)).toEqual(back);
    }
  });

  it('counts a shim as a longer shock', () => {
    expect(madeRear(table, { shockMountShim: 2 }).toppedOutSine).toBe(
      madeRear(table, { shockLength: 2 }).toppedOutSine,
    );
  });

  it('has no rod and no eccentric', () => {
    expect(refused(table, { linkLength: 1 }).reason).toBe('adjusterNeedsLinks');
    expect(refused(table, { pivotUp: 1 }).reason).toBe('adjusterNeedsLinks');
  });

  it('has a lever that gives its motion ratio and the change of the ratio', () => {
    const of = madeRear(table);
    const h = 1e-5;
    for (const travel of evenly(3, 127, 13)) {
      const at = rearAt(of, travel);
      const strokeAt = (angle: number) =>
        rearAt(of, of.arm * (of.toppedOutSine - Math.sin(angle + of.framePitch))).shockStroke;
      expect(at.lever).toBeCloseTo((strokeAt(at.angle - h) - strokeAt(at.angle + h)) / (2 * h), 4);
      const leverAt = (angle: number) =>
        rearAt(of, of.arm * (of.toppedOutSine - Math.sin(angle + of.framePitch))).lever;
      expect(at.leverSlope).toBeCloseTo((leverAt(at.angle + h) - leverAt(at.angle - h)) / (2 * h), 3);
    }
  });
});

describe.each(rearLayouts)('$name', ({ layout }) => {
  it('hangs near the angle at which it was drawn with its shock extended, and has the shock’s stroke', () => {
    const of = madeRear(layout);
    expect(rearAt(of, 0).angle).toBeCloseTo(radians(9.5), 2);
    expect(rearAt(of, 0).shockStroke).toBeCloseTo(0, 9);
    const { fullLength, closedLength } = layout.shock;
    expect(rearAt(of, of.wheelTravel).shockStroke).toBeCloseTo(fullLength - closedLength, 8);
    expect(of.endsBy).toBe('shockClosed');
  });

  it('needs less stroke per rise with the axle further back', () => {
    const [front, back] = [madeRear(layout), madeRear(layout, { axlePosition: 25 })];
    expect(rearAt(back, 60).shockStroke).toBeLessThan(rearAt(front, 60).shockStroke);
    expect(rearAt(back, 0).angle).toBeCloseTo(rearAt(front, 0).angle, 12);
  });

  it('hangs lower in the frame with the pivot moved up', () => {
    const drop = (y: number) => {
      const of = madeRear(layout, { pivotUp: y });
      return of.toppedOutSine;
    };
    expect(drop(2)).not.toBeCloseTo(drop(0), 4);
    expect((drop(2) - drop(0)) * (drop(0) - drop(-2))).toBeGreaterThan(0);
  });
});

describe('links are refused', () => {
  it('when the shock is longer than they allow, with their longest', () => {
    const no = refused({ ...rockerOnArm, shock: { fullLength: 600, closedLength: 520 } });
    expect(no).toMatchObject({ reason: 'shockTooLong', found: 600, because: 'shockEndsMoveAlike' });
    expect(no.limit).toBeGreaterThan(318);
  });

  it('when even extended it is too short', () => {
    expect(refused({ ...rockerOnArm, shock: { fullLength: 90, closedLength: 50 } }).reason).toBe(
      'shockTooShort',
    );
  });

  it('when there is no arm', () => {
    expect(refused(rockerToFrame, {}, 0).reason).toBe('swingarmCannotReach');
    expect(refused(rockerToFrame, { axlePosition: -600 }).reason).toBe('swingarmCannotReach');
    expect(refused(rockerToFrame, {}, NaN).reason).toBe('inputNotANumber');
  });

  it('where the travel leaves their range or takes the axle over the top', () => {
    const of = madeRear(rockerToFrame);
    expect(suspensionAt(of, 420)).toMatchObject({ reason: 'armBeyondLinks', because: 'beyondStroke' });
    expect(suspensionAt(of, -330)).toMatchObject({ reason: 'armBeyondLinks' });
    expect(suspensionAt(of, 800)).toMatchObject({ reason: 'swingarmCannotReach', found: 800 });
    expect(suspensionAt(of, NaN)).toMatchObject({ reason: 'inputNotANumber' });
  });
});

it('a shock that could close further than the links allow leaves the links to end the travel, and says so', () => {
  const of = madeRear({ ...twoShocks, shock: { fullLength: 367, closedLength: 10 } });
  expect(of.endsBy).toBe('shockThroughPivot');
  expect(rearAt(of, of.wheelTravel).motionRatio).toBeCloseTo(0, 6);
});
