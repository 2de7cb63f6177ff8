/** Tests of the curves over a suspension's travel. */
import { describe, expect, it } from 'vitest';
import { plainBike } from '../../../tests/support/plain-bike.ts';
import { rockerOnArm, rockerToFrame, rearLayouts, twoShocks } from '../../../tests/support/rear-layouts.ts';
import { madeRear } from '../../../tests/support/rear-made.ts';
import { AS_DELIVERED } from './link-adjustments.ts';
import { suspension } from './suspension.ts';
import { CURVE_POINTS, travelCurves, type TravelCurves } from './travel-curves.ts';

const spring = { force: (stroke: number) => 90 * (8 + stroke), rate: () => 90 };

function curves(...of: Parameters<typeof travelCurves>): TravelCurves {
  const found = travelCurves(...of);
  if (!found.ok) throw new Error(found.reason);
  return found;
}

describe('the curves', () => {
  it.each(rearLayouts)('of $name run from hanging to the end of the stroke, all numbers', ({ layout }) => {
    const { points, progression } = curves(madeRear(layout), spring);
    expect(points).toHaveLength(CURVE_POINTS);
    expect(points[0]).toMatchObject({ travel: 0 });
    expect(points[0].shockStroke).toBeCloseTo(0, 9);
    const { fullLength, closedLength } = layout.shock;
    expect(points[CURVE_POINTS - 1].shockStroke).toBeCloseTo(fullLength - closedLength, 8);
    for (const point of points)
      for (const value of Object.values(point)) expect(Number.isFinite(value)).toBe(true);
    expect(progression).not.toBeNull();
  });

  it('have wheel rates that are the slopes of the wheel forces', () => {
    const { points } = curves(madeRear(rockerOnArm), spring);
    for (let i = 1; i < CURVE_POINTS - 1; i++) {
      const rise = points[i + 1].travel - points[i - 1].travel;
      const slope = ((points[i + 1].wheelForce ?? NaN) - (points[i - 1].wheelForce ?? NaN)) / rise;
      expect(points[i].wheelRate).toBeCloseTo(slope, 1);
    }
  });

  it('have no forces without a spring', () => {
    for (const point of curves(madeRear(rockerToFrame), null).points)
      expect([point.wheelForce, point.wheelRate]).toEqual([null, null]);
  });

  it('tell a link rod’s progressive suspension from two straight shocks', () => {
    expect(curves(madeRear(rockerOnArm), null).progression?.word).toBe('progressive');
    expect(curves(madeRear(twoShocks), null).progression?.word).toBe('nearlyStraight');
  });

  it('are there for a table', () => {
    const { travelTable, toppedOutAngleDeg, wheelTravel } = plainBike.swingarm;
    const of = madeRear({ kind: 'table', travelTable, tablePitchDeg: 0, toppedOutAngleDeg, wheelTravel });
    const { points } = curves(of, spring);
    expect(points[CURVE_POINTS - 1].shockStroke).toBeCloseTo(66, 9);
  });

  it('that end at a dead point have no leverage there and no progression', () => {
    const layout = { ...twoShocks, shock: { fullLength: 367, closedLength: 5 } };
    const of = suspension(layout, 580, AS_DELIVERED);
    if (!of.ok) throw new Error(of.reason);
    expect(of.endsBy).toBe('shockThroughPivot');
    const { points, progression } = curves(of, null);
    expect(points[CURVE_POINTS - 1].leverage).toBeNull();
    expect(progression).toBeNull();
  });
});
