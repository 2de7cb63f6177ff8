/** Tests of where the points of a linkage are. */
import { describe, expect, it } from 'vitest';
import { rearLayouts, rockerToFrame } from '../../../tests/support/rear-layouts.ts';
import { madeLinks } from '../../../tests/support/rear-made.ts';
import { distance } from '../plane/point.ts';
import { armPointInFrame, drawnPoints, framePointOnArm } from './link-drawing.ts';
import { linkPoints } from './link-points.ts';

describe('a point of the swingarm', () => {
  it('lies `along` behind the pivot and `above` over the arm’s line', () => {
    expect(armPointInFrame({ along: 200, above: 30 }, 0)).toEqual({ x: -200, y: 30 });
    const steep = armPointInFrame({ along: 200, above: 30 }, Math.PI / 6);
    expect(steep.x).toBeCloseTo(-200 * Math.cos(Math.PI / 6) - 15, 12);
    expect(steep.y).toBeCloseTo(-100 + 30 * Math.cos(Math.PI / 6), 12);
  });

  it('comes back from its place in the frame', () => {
    const back = framePointOnArm(armPointInFrame({ along: 321, above: -45 }, 0.3), 0.3);
    expect(back.along).toBeCloseTo(321, 11);
    expect(back.above).toBeCloseTo(-45, 11);
  });
});

it.each(rearLayouts)('$name stands as it was drawn at the drawn angle', ({ layout }) => {
  const of = madeLinks(layout);
  const drawn = drawnPoints(layout, of.drawnAngle);
  const points = linkPoints(of, of.drawnAngle) ?? [];
  expect(points).toHaveLength(drawn.length);
  points.forEach((point, i) => {
    expect([point.key, point.part]).toEqual([drawn[i].key, drawn[i].part]);
    expect(distance(point.place, drawn[i].place)).toBeLessThan(1e-9);
  });
});

it('a linkage has no points where its links cannot close', () => {
  expect(linkPoints(madeLinks(rockerToFrame), 3)).toBeNull();
});
