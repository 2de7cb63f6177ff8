/** Tests of the taut chain's way, over the guide and without. */
import { describe, expect, it } from 'vitest';
import { outerTangent, type Circle } from '../plane/circle.ts';
import { distance } from '../plane/point.ts';
import { chainByHull } from '../../../tests/support/chain-by-hull.ts';
import { linksAround } from '../../../tests/support/taut-chain.ts';
import { chainLoop } from './chain-loop.ts';
import { chainPath, type PivotGuides } from './chain-path.ts';

const loop = chainLoop(15, 45, 15.875);
const rear = { x: -570, y: -130 };
const front = { x: 78, y: -30 };

/** A guide over the pivot, and none under it. */
const over = (upper: number): PivotGuides => ({ centre: { x: 0, y: 0 }, upper, lower: null });

/** Angle of a tangent's way. */
function wayOf(from: Circle, to: Circle): { angle: number; length: number } {
  const tangent = outerTangent(from, to, 'left');
  if (tangent === 'oneInsideOther') throw new Error(tangent);
  return {
    angle: Math.atan2(tangent.to.y - tangent.from.y, tangent.to.x - tangent.from.x),
    length: distance(tangent.from, tangent.to),
  };
}

describe('the taut chain', () => {
  it('round equal sprockets is two runs of the centre distance and all teeth of one', () => {
    expect(linksAround(chainLoop(16, 16, 12.7), 508)).toBeCloseTo(2 * (508 / 12.7) + 16, 12);
  });

  it('does not care which sprocket drives', () => {
    expect(linksAround(chainLoop(45, 15, 15.875), 640)).toBeCloseTo(linksAround(loop, 640), 12);
  });

  it('is as long wherever its sprockets stand, and with a guide out of its way', () => {
    const path = chainPath(loop, rear, front, null);
    expect(path?.links).toBeCloseTo(linksAround(loop, distance(rear, front)), 12);
    const clear = chainPath(loop, rear, front, over(5));
    expect(clear).toMatchObject({ onGuide: false, links: path?.links });
    expect(clear?.topLever).toBeGreaterThan(5);
  });

  it('over the guide is made of two tangents and an arc, with less chain on the front sprocket', () => {
    const guide = { centre: { x: 0, y: 0 }, radius: 45 };
    const path = chainPath(loop, rear, front, over(45));
    if (path === null) throw new Error('no path');
    expect(path.onGuide).toBe(true);
    expect(path.bend).toBeGreaterThan(0);
    const circles = [
      { centre: rear, radius: loop.rearRadius },
      guide,
      { centre: front, radius: loop.frontRadius },
    ] as const;
    const behind = wayOf(circles[0], circles[1]);
    const ahead = wayOf(circles[1], circles[2]);
    expect(path.bend).toBeCloseTo(behind.angle - ahead.angle, 12);
    const bottom = outerTangent(circles[0], circles[2], 'right');
    if (bottom === 'oneInsideOther') throw new Error(bottom);
    const bottomAngle = Math.atan2(bottom.to.y - bottom.from.y, bottom.to.x - bottom.from.x);
    const runs =
      behind.length +
      ahead.length +
      distance(bottom.from, bottom.to) +
      guide.radius * (behind.angle - ahead.angle);
    const wraps = [
      (45 * (Math.PI + bottomAngle - behind.angle)) / (2 * Math.PI),
      (15 * (Math.PI - (bottomAngle - ahead.angle))) / (2 * Math.PI),
    ];
    expect(path.links).toBeCloseTo(runs / loop.pitch + wraps[0] + wraps[1], 10);
    expect(path.links).toBeGreaterThan(linksAround(loop, distance(rear, front)));
  });

  it('touches the guide without a jump of its length', () => {
    const clear = chainPath(loop, rear, front, over(1));
    const lever = clear?.topLever ?? 0;
    const touching = chainPath(loop, rear, front, over(lever + 1e-7));
    expect(touching?.onGuide).toBe(true);
    expect(Math.abs((touching?.links ?? 0) - (clear?.links ?? 0))).toBeLessThan(1e-9);
  });

  it('runs free when the guide does not lie between the ends of the run', () => {
    const ahead = chainPath(loop, rear, front, { centre: { x: 300, y: 40 }, upper: 300, lower: null });
    expect(ahead).toMatchObject({ onGuide: false, links: chainPath(loop, rear, front, null)?.links });
  });

  it('has no way where sprockets overlap or swallow the guide', () => {
    expect(chainPath(loop, rear, { x: -500, y: -130 }, null)).toBeNull();
    expect(chainPath(loop, rear, front, { centre: { x: 70, y: -30 }, upper: 400, lower: null })).toBeNull();
    expect(chainPath(loop, rear, { x: NaN, y: 0 }, null)).toBeNull();
  });

  it('under the guide is the lower hull of sprockets and guide, and both guides add what each adds', () => {
    const links = (upper: number | null, lower: number | null): number => {
      const path = chainPath(loop, rear, front, { centre: { x: 0, y: 0 }, upper, lower });
      if (path === null) throw new Error('no path');
      expect(path.underGuide).toBe(lower !== null && lower > 60);
      return path.links;
    };
    const free = links(null, null);
    expect(links(null, 60)).toBe(free);
    for (const lower of [92, 105, 118]) {
      const guide = { centre: { x: 0, y: 0 }, radius: lower };
      expect(links(null, lower)).toBeGreaterThan(free);
      expect(Math.abs(links(null, lower) - chainByHull(loop, rear, front, guide))).toBeLessThan(1e-5);
      expect(links(45, lower) - free).toBeCloseTo(links(45, null) - free + (links(null, lower) - free), 10);
    }
  });
});
