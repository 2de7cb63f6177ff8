/** Tests of how far the links let the arm swing, and what stops it. */
import { describe, expect, it } from 'vitest';
import { rockerOnArm, rockerToFrame, rearLayouts, twoShocks } from '../../../tests/support/rear-layouts.ts';
import { evenly, madeLinks, madeRange, madeShock } from '../../../tests/support/rear-made.ts';
import { AS_DELIVERED } from './link-adjustments.ts';
import type { LinkLayout, RockerOnFrameLayout } from '../parts/rear-layout.ts';
import { linkRange } from './link-range.ts';
import { links, shockAt } from './links.ts';
import type { NoLinkage } from './no-linkage.ts';

function refused(layout: LinkLayout): NoLinkage {
  const of = links(layout, AS_DELIVERED);
  const range = of.ok ? linkRange(of, 0) : of;
  if (range.ok) throw new Error('It has a range');
  return range;
}

describe.each(rearLayouts)('the range of $name', ({ layout }) => {
  const of = madeLinks(layout);
  const { low, high } = madeRange(layout);

  it('has a shock that grows all the way as the arm swings down', () => {
    expect(low.angle).toBeLessThan(of.drawnAngle);
    expect(high.angle).toBeGreaterThan(of.drawnAngle);
    for (const angle of evenly(low.angle + 1e-6, high.angle - 1e-6, 2000))
      expect(madeShock(of, angle).slope).toBeGreaterThan(0);
  });

  it('ends where the links stop, the shock stands still, or the arm stands upright', () => {
    for (const [end, beyond] of [
      [low, -1e-5],
      [high, 1e-5],
    ] as const) {
      const there = shockAt(of, end.angle + beyond);
      if (end.why === 'rodAndRockerInLine') expect(there).toBeNull();
      else if (end.why === 'armUpright') expect(Math.abs(Math.sin(end.angle))).toBeCloseTo(0.999, 12);
      else {
        expect(there?.slope).toBeLessThan(0);
        expect(Math.abs(madeShock(of, end.angle).slope)).toBeLessThan(1e-6);
      }
    }
  });
});

it('the range searched for the stroke lies in the whole one, holds the stroke, and ends with it or just beyond', () => {
  for (const { layout } of rearLayouts) {
    const of = madeLinks(layout);
    const [whole, needed] = [linkRange(of, 0), linkRange(of, 0, 'stroke')];
    if (!whole.ok || !needed.ok) throw new Error('It has a range');
    expect(needed.low.angle).toBeGreaterThanOrEqual(whole.low.angle);
    expect(needed.high.angle).toBeLessThanOrEqual(whole.high.angle);
    expect(needed.low).toMatchObject({
      why: 'beyondStroke',
      shockLength: madeShock(of, needed.low.angle).length,
    });
    expect(needed.low.shockLength).toBeLessThan(of.closedLength);
    expect(needed.high.shockLength).toBeGreaterThan(of.fullLength);
    expect(needed.high.why).toBe('beyondStroke');
  }
});

describe('a dead point', () => {
  it('of a straight shock is where it points at the swingarm pivot', () => {
    const { low } = madeRange(twoShocks);
    const mount = Math.atan2(twoShocks.shockOnFrame.y, twoShocks.shockOnFrame.x);
    const eye = Math.atan2(twoShocks.shockOnArm.above, -twoShocks.shockOnArm.along);
    expect(low).toMatchObject({ why: 'shockThroughPivot' });
    expect(low.angle).toBeCloseTo(mount - eye, 10);
  });

  // Rod 100 long from an arm point 200 out to a rocker of 50 whose pivot is straight above at 120: in line at
  // the angle at which that point is 150 from the pivot, by the cosine rule.
  it('of rod and rocker in line is where the cosine rule puts it', () => {
    const layout: RockerOnFrameLayout = {
      ...rockerToFrame,
      drawnAngleDeg: 0,
      rockerPivot: { x: -200, y: 120 },
      rodOnRocker: { x: -233.0718913883, y: 82.5 },
      shockOnRocker: { x: -240, y: 130 },
      rodOnArm: { along: 200, above: 0 },
      shockFarEnd: { on: 'frame', at: { x: -230, y: 420 } },
    };
    const of = madeLinks(layout);
    if (of.kind !== 'rocker') throw new Error('It has a rocker');
    const rod = of.loop.rodLength;
    const away = Math.hypot(200, 120);
    const between = Math.acos((away ** 2 + 200 ** 2 - (rod + 50) ** 2) / (2 * away * 200));
    const { high } = madeRange(layout);
    expect(high.why).toBe('rodAndRockerInLine');
    expect(high.angle).toBeCloseTo(between - Math.atan2(120, 200), 6);
  });

  // Found among random layouts: the shock stands still, goes back and comes again within two degrees of arm.
  it('is found even where two of them lie between neighbouring places of the search', () => {
    const layout: LinkLayout = {
      kind: 'rockerOnArm',
      drawnAngleDeg: 14.66994,
      framePitchDeg: 0,
      shock: { fullLength: 100, closedLength: 20 },
      rockerPivot: { along: 215.108, above: 88.5211 },
      rodOnRocker: { along: -86.9764, above: -20.9828 },
      shockOnRocker: { along: 85.1528, above: 249.99505 },
      rodOnFrame: { x: -393.29715, y: -78.0928 },
      shockFarEnd: { on: 'frame', at: { x: -116.60535, y: 233.8958 } },
    };
    const of = madeLinks(layout);
    const { high } = madeRange(layout);
    expect(high).toMatchObject({ why: 'shockEndsMoveAlike' });
    expect(madeShock(of, high.angle + 1e-4).slope).toBeLessThan(0);
    expect(madeShock(of, high.angle + 0.04).slope).toBeGreaterThan(0);
  });

  it('of a shock that points at the rocker’s pivot, or a rod at the swingarm’s, is named', () => {
    expect(madeRange(rockerToFrame).low.why).toBe('shockThroughRocker');
    const of = madeLinks(rockerToFrame);
    if (of.kind !== 'rocker') throw new Error('It has a rocker');
    const rodDead = rearLayouts.flatMap(({ layout }) => {
      const range = madeRange(layout);
      return [range.low.why, range.high.why];
    });
    expect(rodDead).toContain('rodAndRockerInLine');
    expect(rodDead).toContain('shockEndsMoveAlike');
  });
});

describe('a range is refused', () => {
  it('when the shock is pulled as the wheel rises', () => {
    expect(refused({ ...twoShocks, shockOnFrame: { x: -330, y: -300 } })).toMatchObject({
      reason: 'shockPulled',
    });
  });

  it('when it was drawn at a dead point, which is named', () => {
    const eye = { along: 400, above: 0 };
    const line = { ...twoShocks, drawnAngleDeg: 0, shockOnArm: eye, shockOnFrame: { x: -100, y: 0 } };
    expect(refused(line)).toMatchObject({ reason: 'drawnAtDeadPoint', because: 'shockThroughPivot' });
  });

  it('when it was drawn with the arm upright', () => {
    expect(refused({ ...twoShocks, drawnAngleDeg: 89.5 })).toMatchObject({
      reason: 'armBeyondLinks',
      because: 'armUpright',
    });
  });

  it('when the rod is too long or too short for any position, with the nearest length that fits', () => {
    for (const linkLength of [-140, 500]) {
      const of = links(rockerToFrame, { ...AS_DELIVERED, linkLength });
      if (!of.ok || of.kind !== 'rocker') throw new Error('It is made');
      const range = linkRange(of, 0);
      if (range.ok || range.limit === undefined) throw new Error('It has a range, or no limit');
      expect(range.reason).toBe('linkageCannotClose');
      expect(range.found).toBe(of.loop.rodLength);
      const toLimit = range.limit - of.loop.rodLength;
      const just = links(rockerToFrame, {
        ...AS_DELIVERED,
        linkLength: linkLength + toLimit + Math.sign(toLimit),
      });
      if (!just.ok || just.kind !== 'rocker') throw new Error('It is made');
      const closes = evenly(-Math.PI, Math.PI, 20_000).some((angle) => shockAt(just, angle) !== null);
      expect(closes).toBe(true);
    }
  });

  it('never for turning the frame’s axes: the range turns with them', () => {
    const turn = 0.1;
    const degrees = (turn * 180) / Math.PI;
    const layout = rockerOnArm;
    if (layout.shockFarEnd.on !== 'frame') throw new Error('Its shock goes to the frame');
    const point = ({ x, y }: { x: number; y: number }) => ({
      x: Math.cos(turn) * x - Math.sin(turn) * y,
      y: Math.sin(turn) * x + Math.cos(turn) * y,
    });
    const other: LinkLayout = {
      ...layout,
      drawnAngleDeg: layout.drawnAngleDeg + degrees,
      framePitchDeg: -degrees,
      rodOnFrame: point(layout.rodOnFrame),
      shockFarEnd: { on: 'frame', at: point(layout.shockFarEnd.at) },
    };
    const [a, b] = [madeRange(layout), madeRange(other)];
    expect(b.low.angle - turn).toBeCloseTo(a.low.angle, 10);
    expect(b.high.angle - turn).toBeCloseTo(a.high.angle, 10);
  });
});
