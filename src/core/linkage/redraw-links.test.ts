/** Tests of redrawing a layout: in another posture, with its adjusters taken in, or with a point moved. */
import { describe, expect, it } from 'vitest';
import { rearLayouts, rockerToFrame, twoShocks } from '../../../tests/support/rear-layouts.ts';
import { evenly, madeLinks, madeRange, madeShock } from '../../../tests/support/rear-made.ts';
import type { LinkLayout } from '../parts/rear-layout.ts';
import { distance, type Point } from '../plane/point.ts';
import { radians } from '../units/convert.ts';
import { AS_DELIVERED } from './link-adjustments.ts';
import { linkPoints } from './link-points.ts';
import type { NoLinkage } from './no-linkage.ts';
import { redrawLinks, takeAdjustersOut, withLinkPoint } from './redraw-links.ts';

function given(layout: LinkLayout | NoLinkage): LinkLayout {
  if ('ok' in layout) throw new Error(layout.reason);
  return layout;
}

function pointsAt(layout: LinkLayout, angle: number) {
  const points = linkPoints(madeLinks(layout), angle);
  if (points === null) throw new Error('The links do not close');
  return points;
}

function place(layout: LinkLayout, angle: number, key: string): Point {
  const found = pointsAt(layout, angle).find((point) => point.key === key);
  if (found === undefined) throw new Error(key);
  return found.place;
}

describe.each(rearLayouts)('$name', ({ layout }) => {
  const of = madeLinks(layout);
  const range = madeRange(layout);
  const angles = evenly(range.low.angle + 0.05, range.high.angle - 0.05, 9);

  it('is the same linkage when drawn in another posture', () => {
    for (const drawnAt of angles) {
      const other = madeLinks(given(redrawLinks(layout, drawnAt)));
      expect(other.drawnAngle).toBeCloseTo(drawnAt, 12);
      for (const angle of angles)
        expect(madeShock(other, angle).length).toBeCloseTo(madeShock(of, angle).length, 7);
    }
  });

  it('has each point exactly where a hand puts it, with the arm at that angle', () => {
    for (const { key, place: was } of pointsAt(layout, angles[4])) {
      const to = { x: was.x + 3, y: was.y - 2 };
      const moved = given(withLinkPoint(layout, key, to, angles[4]));
      expect(distance(place(moved, angles[4], key), to)).toBeLessThan(1e-9);
      for (const other of pointsAt(layout, angles[4]))
        if (other.key !== key)
          expect(distance(place(moved, angles[4], other.key), other.place)).toBeLessThan(1e-9);
    }
  });
});

describe('the adjusters taken into a drawing and out of it again', () => {
  it.each(rearLayouts)(
    '$name: the drawing with them in is the linkage as it stands, and with them out it is the layout again',
    ({ layout }) => {
      const adjusters = {
        ...AS_DELIVERED,
        shockLength: 3,
        shockMountShim: 2.5,
        linkLength: layout.kind === 'direct' ? 0 : -1.5,
        pivotForward: 2,
        pivotUp: -3,
      };
      for (const angle of [0.02, 0.12]) {
        const seen = given(redrawLinks(layout, angle, adjusters));
        const of = madeLinks(layout, adjusters);
        const asSeen = madeLinks(seen);
        for (const at of [0.02, 0.07, 0.12])
          expect(madeShock(asSeen, at).length).toBeCloseTo(madeShock(of, at).length, 9);
        const back = given(takeAdjustersOut(seen, radians(layout.drawnAngleDeg), adjusters));
        const numbers = (of: unknown): number[] =>
          typeof of === 'number'
            ? [of]
            : typeof of === 'object'
              ? Object.values(of ?? {}).flatMap(numbers)
              : [];
        const was = numbers(layout);
        numbers(back).forEach((value, i) => expect(value).toBeCloseTo(was[i], 8));
        expect(numbers(back)).toHaveLength(was.length);
        expect(Object.keys(back)).toEqual(Object.keys(layout));
      }
    },
  );
});

it('a point is refused when the layout does not have it, or the links do not close', () => {
  expect(withLinkPoint(twoShocks, 'rodOnArm', { x: 0, y: 0 }, 0)).toMatchObject({ reason: 'pointUnknown' });
  expect(withLinkPoint(twoShocks, 'shockFarEnd', { x: 0, y: 0 }, 0)).toMatchObject({
    reason: 'pointUnknown',
  });
  expect(withLinkPoint(rockerToFrame, 'rodOnArm', { x: 0, y: 0 }, 3)).toMatchObject({
    reason: 'armBeyondLinks',
  });
  expect(redrawLinks(rockerToFrame, NaN)).toMatchObject({ reason: 'inputNotANumber' });
});
