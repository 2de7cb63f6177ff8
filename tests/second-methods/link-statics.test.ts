/** Motion ratio, wheel force and wheel rate of every layout, by free bodies, by differences and by energy. */
import { describe, expect, it } from 'vitest';
import { linkPoints } from '../../src/core/linkage/link-points.ts';
import { wheelForce, wheelRate } from '../../src/core/linkage/leverage.ts';
import type { Layout, LinkLayout } from '../../src/core/parts/rear-layout.ts';
import type { Links } from '../../src/core/linkage/links.ts';
import type { Suspension } from '../../src/core/linkage/suspension.ts';
import type { Point } from '../../src/core/plane/point.ts';
import { plainBike } from '../support/plain-bike.ts';
import { ARM_LENGTH, rearLayouts } from '../support/rear-layouts.ts';
import { evenly, madeLinks, madeRear, rearAt } from '../support/rear-made.ts';

const { travelTable, toppedOutAngleDeg, wheelTravel } = plainBike.swingarm;
const table: Layout = { kind: 'table', travelTable, tablePitchDeg: 0, toppedOutAngleDeg, wheelTravel };
const withTable: readonly { name: string; layout: Layout }[] = [
  ...rearLayouts,
  { name: 'a table', layout: table },
];

/** A spring of 90 N/mm with 8 mm of preload. */
const RATE = 90;
const PRELOAD = 8;
const force = (stroke: number): number => RATE * (PRELOAD + stroke);

function forceAtWheel(of: Suspension, travel: number): number {
  const at = rearAt(of, travel);
  return wheelForce(force(at.shockStroke), at.motionRatio);
}

const cross = (a: Point, b: Point): number => a.x * b.y - a.y * b.x;
const unit = (from: Point, to: Point): Point => {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  return { x: (to.x - from.x) / length, y: (to.y - from.y) / length };
};
const times = (a: Point, by: number): Point => ({ x: a.x * by, y: a.y * by });

/**
 * Force straight up at the axle that holds a push of one newton in the shock, from free bodies: the rocker's moments
 * give the pull in the rod, the swingarm's (with the rocker, where it carries it) the force at the axle.
 */
function heldByFreeBodies(layout: LinkLayout, of: Links, angle: number): number {
  const points = linkPoints(of, angle);
  if (points === null) throw new Error('The links do not close');
  const at = (key: string): Point => {
    const found = points.find((point) => point.key === key);
    if (found === undefined) throw new Error(key);
    return found.place;
  };
  let moment: number;
  if (layout.kind === 'direct') {
    const eye = at('shockOnArm');
    moment = cross(eye, unit(at('shockOnFrame'), eye));
  } else {
    const [pivot, rod, shock, far] = ['rockerPivot', 'rodOnRocker', 'shockOnRocker', 'shockFarEnd'].map(at);
    const end = at(layout.kind === 'rockerOnFrame' ? 'rodOnArm' : 'rodOnFrame');
    const push = unit(far, shock);
    const along = unit(rod, end);
    const arm = (p: Point): Point => ({ x: p.x - pivot.x, y: p.y - pivot.y });
    const pull = -cross(arm(shock), push) / cross(arm(rod), along);
    moment =
      layout.kind === 'rockerOnFrame'
        ? cross(end, times(along, -pull))
        : cross(rod, times(along, pull)) + cross(shock, push);
    if (layout.shockFarEnd.on === 'arm') moment -= cross(far, push);
  }
  return moment / (ARM_LENGTH * Math.cos(angle));
}

describe.each(rearLayouts)('$name', ({ layout }) => {
  it('has the motion ratio that free bodies of arm, rod and rocker give', () => {
    const of = madeRear(layout);
    for (const travel of evenly(0, of.wheelTravel, 50)) {
      const at = rearAt(of, travel);
      expect(heldByFreeBodies(layout, madeLinks(layout), at.angle)).toBeCloseTo(at.motionRatio, 10);
    }
  });

  it('keeps free bodies in equilibrium with every adjuster turned', () => {
    const change = { shockLength: 3, shockMountShim: 2, pivotForward: 2, pivotUp: -3 };
    const adjusters = layout.kind === 'direct' ? change : { ...change, linkLength: -2 };
    const of = madeRear(layout, adjusters);
    const at = rearAt(of, of.wheelTravel / 2);
    const held = heldByFreeBodies(layout, madeLinks(layout, adjusters), at.angle);
    expect(held).toBeCloseTo(at.motionRatio, 10);
  });
});

describe.each(withTable)('$name', ({ layout }) => {
  const of = madeRear(layout, { axlePosition: 12 });
  // Strictly inside, and for the table away from its rows, at which the third derivative jumps.
  const places = evenly(1.3, of.wheelTravel - 1.7, 47);

  it('has the motion ratio that differences of shock stroke over axle rise find', () => {
    const h = 1e-3;
    for (const travel of places) {
      const difference = (rearAt(of, travel + h).shockStroke - rearAt(of, travel - h).shockStroke) / (2 * h);
      expect(rearAt(of, travel).motionRatio).toBeCloseTo(difference, 8);
    }
  });

  it('lifts its axle by the travel used', () => {
    const height = (travel: number) => -of.arm * Math.sin(rearAt(of, travel).angle);
    expect(height(61) - height(0)).toBeCloseTo(61, 10);
  });

  it('has the wheel rate that differences of wheel force find: spring rate · ratio² + force · change of ratio', () => {
    const h = 1e-3;
    for (const travel of places) {
      const at = rearAt(of, travel);
      const difference = (forceAtWheel(of, travel + h) - forceAtWheel(of, travel - h)) / (2 * h);
      const rate = wheelRate(RATE, force(at.shockStroke), at.motionRatio, at.motionRatioSlope);
      expect(Math.abs(rate / difference - 1)).toBeLessThan(1e-5);
    }
  });

  it('takes up as much work at the wheel over its travel as its spring holds, to 1e-9', () => {
    // Between the table's rows the curve is smooth, so each piece is summed by itself.
    const knots = layout.kind === 'table' ? layout.travelTable.map((row) => row.wheelTravel) : [0];
    const ends = [
      ...knots.map((k) => (k * of.arm) / ARM_LENGTH).filter((k) => k < of.wheelTravel),
      of.wheelTravel,
    ];
    let work = 0;
    for (let piece = 1; piece < ends.length; piece++) {
      // Simpson's rule.
      const at = evenly(ends[piece - 1], ends[piece], 2001);
      const weight = (i: number) => (i === 0 || i === 2000 ? 1 : i % 2 === 1 ? 4 : 2);
      const sum = at.reduce((total, travel, i) => total + weight(i) * forceAtWheel(of, travel), 0);
      work += (sum * (ends[piece] - ends[piece - 1])) / 6000;
    }
    const stroke = rearAt(of, of.wheelTravel).shockStroke;
    const energy = (RATE * ((PRELOAD + stroke) ** 2 - PRELOAD ** 2)) / 2;
    expect(Math.abs(work / energy - 1)).toBeLessThan(1e-9);
  });
});
