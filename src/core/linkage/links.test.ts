/** Tests of a layout with its adjusters set: lengths, derivatives, and what each adjuster does. */
import { describe, expect, it } from 'vitest';
import {
  rearLayouts,
  rockerOnArm,
  rockerToFrame,
  twoShocks,
  rockerToArm,
} from '../../../tests/support/rear-layouts.ts';
import {
  evenly,
  madeLinks,
  madeRange,
  madeRear,
  madeShock,
  rearAt,
} from '../../../tests/support/rear-made.ts';
import type { FramePoint } from '../parts/frame-point.ts';
import { distance } from '../plane/point.ts';
import { radians } from '../units/convert.ts';
import { AS_DELIVERED, type RearAdjusters } from './link-adjustments.ts';
import { asStored, fromPivot } from '../chassis/pivot-move.ts';
import { drawnPoints } from './link-drawing.ts';
import type { LinkLayout, ShockFarEnd } from '../parts/rear-layout.ts';
import { linkPoints } from './link-points.ts';
import { links } from './links.ts';

const refusal = (layout: LinkLayout, change: Partial<RearAdjusters> = {}) => {
  const of = links(layout, { ...AS_DELIVERED, ...change });
  return of.ok ? 'made' : of.reason;
};

/** The shock's length measured between its two eyes on the drawing. */
function drawnShock(layout: LinkLayout): number {
  const ends = layout.kind === 'direct' ? ['shockOnFrame', 'shockOnArm'] : ['shockOnRocker', 'shockFarEnd'];
  const at = (key: string) => {
    const found = drawnPoints(layout, radians(layout.drawnAngleDeg)).find((p) => p.key === key);
    if (found === undefined) throw new Error(key);
    return found.place;
  };
  return distance(at(ends[0]), at(ends[1]));
}

/** The layout with each of its frame points elsewhere. */
function withFramePoints(layout: LinkLayout, moved: (p: FramePoint) => FramePoint): LinkLayout {
  if (layout.kind === 'direct') return { ...layout, shockOnFrame: moved(layout.shockOnFrame) };
  const far = layout.shockFarEnd;
  const shockFarEnd: ShockFarEnd = far.on === 'frame' ? { on: 'frame', at: moved(far.at) } : far;
  return layout.kind === 'rockerOnArm'
    ? { ...layout, shockFarEnd, rodOnFrame: moved(layout.rodOnFrame) }
    : {
        ...layout,
        shockFarEnd,
        rockerPivot: moved(layout.rockerPivot),
        rodOnRocker: moved(layout.rodOnRocker),
        shockOnRocker: moved(layout.shockOnRocker),
      };
}

describe.each(rearLayouts)('$name', ({ layout }) => {
  const of = madeLinks(layout);
  const range = madeRange(layout);
  const inside = evenly(range.low.angle + 0.02, range.high.angle - 0.02, 60);

  it('has the shock as long as it was drawn, in the posture in which it was drawn', () => {
    expect(madeShock(of, of.drawnAngle).length).toBeCloseTo(drawnShock(layout), 10);
  });

  it('has the slope and the bend of shock length that differences find', () => {
    const h = 1e-5;
    for (const angle of inside) {
      const [before, at, after] = [angle - h, angle, angle + h].map((each) => madeShock(of, each));
      const scale = Math.max(1, Math.abs(at.bend));
      expect(Math.abs(at.slope - (after.length - before.length) / (2 * h))).toBeLessThan(1e-6 * scale);
      expect(Math.abs(at.bend - (after.slope - before.slope) / (2 * h))).toBeLessThan(1e-4 * scale);
    }
  });

  it('keeps every rigid distance at every angle of the arm', () => {
    const sides = (angle: number): number[] => {
      const points = linkPoints(of, angle);
      if (points === null) throw new Error('The links do not close');
      // Bolts of frame and arm keep their distance from the pivot, which is the origin.
      const lengths = points
        .filter(({ part }) => part === 'frame' || part === 'arm')
        .map(({ place }) => Math.hypot(place.x, place.y));
      for (const a of points)
        for (const b of points)
          if (a !== b && (a.part === b.part || (a.key === 'rockerPivot' && b.part === 'rocker')))
            lengths.push(distance(a.place, b.place));
      const rod = points.filter((p) => p.key.startsWith('rod'));
      if (rod.length === 2) lengths.push(distance(rod[0].place, rod[1].place));
      return lengths;
    };
    const drawn = sides(of.drawnAngle);
    expect(drawn.length).toBe(of.kind === 'direct' ? 2 : 10);
    for (const angle of inside) sides(angle).forEach((side, i) => expect(side).toBeCloseTo(drawn[i], 9));
  });

  it('hangs lower with a longer shock and with a shim above it, alike to first order', () => {
    const hanging = (change: Partial<RearAdjusters>) => rearAt(madeRear(layout, change), 0).angle;
    const longer = hanging({ shockLength: 2 }) - hanging({});
    const shimmed = hanging({ shockMountShim: 2 }) - hanging({});
    expect(longer).toBeGreaterThan(0);
    expect(shimmed / longer).toBeGreaterThan(0.93);
    expect(shimmed / longer).toBeLessThan(1.07);
  });

  it('is the same linkage when pivot and every frame point move together', () => {
    const by = { pivotForward: 7, pivotUp: -4 };
    const all = withFramePoints(layout, (p) => asStored(p, by));
    // Drawn so, its rod would be another length; the eccentric only moves the pivot and leaves the rod alone.
    const withEccentric = madeLinks(all, by);
    const rodNow = withEccentric.kind === 'rocker' ? withEccentric.loop.rodLength : 0;
    const rodWas = of.kind === 'rocker' ? of.loop.rodLength : 0;
    const back = madeLinks(all, { ...by, linkLength: rodWas - rodNow });
    for (const angle of evenly(of.drawnAngle - 0.1, of.drawnAngle + 0.02, 5))
      expect(madeShock(back, angle).length).toBeCloseTo(madeShock(of, angle).length, 8);
  });
});

describe('an adjuster', () => {
  it('that makes the rod longer changes the rod and no other part', () => {
    for (const layout of [rockerToFrame, rockerOnArm, rockerToArm]) {
      const [was, now] = [madeLinks(layout), madeLinks(layout, { linkLength: 3 })];
      if (was.kind !== 'rocker' || now.kind !== 'rocker') throw new Error('Both have rockers');
      expect(now.loop).toEqual({ ...was.loop, rodLength: was.loop.rodLength + 3 });
    }
  });

  it('on the shock changes both its lengths, so that its stroke stays', () => {
    const now = madeLinks(rockerToFrame, { shockLength: 5 });
    expect([now.fullLength, now.closedLength]).toEqual([304, 244]);
  });

  it('that moves the pivot moves frame points the other way, and back again', () => {
    const by = { pivotForward: 3, pivotUp: -2 };
    expect(fromPivot({ x: 100, y: 50 }, by)).toEqual({ x: 97, y: 52 });
    expect(asStored({ x: 97, y: 52 }, by)).toEqual({ x: 100, y: 50 });
    const of = madeLinks(twoShocks, by);
    expect(of.kind === 'direct' && of.mount).toEqual({ x: -333, y: 302 });
  });

  it('for a rod is refused where there is no rod', () => {
    expect(refusal(twoShocks, { linkLength: 1 })).toBe('adjusterNeedsLinks');
  });
});

describe('a layout is refused', () => {
  it('when a number is not one, or too large for a motorcycle', () => {
    expect(refusal({ ...rockerToFrame, drawnAngleDeg: NaN })).toBe('inputNotANumber');
    expect(refusal(rockerToFrame, { shockMountShim: Infinity })).toBe('inputNotANumber');
    expect(refusal({ ...twoShocks, shockOnFrame: { x: 1e9, y: 0 } })).toBe('inputTooLarge');
  });

  it('when the shock has no stroke, or is made shorter than nothing', () => {
    expect(refusal({ ...rockerToFrame, shock: { fullLength: 200, closedLength: 200 } })).toBe(
      'strokeImpossible',
    );
    expect(refusal({ ...rockerToFrame, shock: { fullLength: 200, closedLength: -1 } })).toBe(
      'strokeImpossible',
    );
    expect(refusal(rockerToFrame, { shockLength: -240 })).toBe('strokeImpossible');
  });

  it('when a part has no length', () => {
    expect(refusal({ ...rockerToFrame, rodOnRocker: rockerToFrame.rockerPivot })).toBe('partHasNoLength');
    expect(refusal({ ...rockerToFrame, shockOnRocker: rockerToFrame.rockerPivot })).toBe('partHasNoLength');
    expect(refusal({ ...rockerToFrame, rodOnArm: { along: 0, above: 0 } })).toBe('partHasNoLength');
    expect(refusal({ ...rockerToFrame, rockerPivot: { x: 0, y: 0 } })).toBe('partHasNoLength');
    expect(refusal(rockerToFrame, { linkLength: -400 })).toBe('partHasNoLength');
    const eyes = { ...rockerToFrame, shockFarEnd: { on: 'frame' as const, at: rockerToFrame.shockOnRocker } };
    expect(refusal(eyes)).toBe('partHasNoLength');
  });

  it('when rod and rocker were drawn in one line', () => {
    const level = { ...rockerToFrame, drawnAngleDeg: 0, rockerPivot: { x: -50, y: -100 } };
    const line = { ...level, rodOnRocker: { x: -150, y: -100 }, rodOnArm: { along: 250, above: -100 } };
    expect(refusal(line)).toBe('drawnInLine');
  });
});
