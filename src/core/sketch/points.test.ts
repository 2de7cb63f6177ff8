/** Tests of the points of the bike. */
import { onGround } from '../chassis/pose.ts';
import { describe, expect, it } from 'vitest';
import { PARTS, placed } from '../../../tests/support/points.ts';
import { plainBike, plainSetup, withFrame, withSwingarm } from '../../../tests/support/plain-bike.ts';
import { rearLayouts } from '../../../tests/support/rear-layouts.ts';
import { standing } from '../../../tests/support/standing.ts';
import { drawnPoints, type LinkPointKey } from '../linkage/link-drawing.ts';
import { distance } from '../plane/point.ts';
import { TOUCH_KEYS } from '../parts/touch-parts.ts';
import { pointPlace, POINTS, pointsOf, SKETCH_POINTS, type PointKey } from './points.ts';

const on = standing(plainBike, plainSetup, { front: 40, rear: 30 });
const place = (key: PointKey) => placed(on, plainBike, key);

describe('the points of the bike', () => {
  it('differ in key and label, and have a sentence of help each', () => {
    expect(new Set(SKETCH_POINTS.map((p) => p.key)).size).toBe(SKETCH_POINTS.length);
    expect(new Set(SKETCH_POINTS.map((p) => p.label)).size).toBe(SKETCH_POINTS.length);
    for (const { help } of SKETCH_POINTS) expect(help).toMatch(/^[A-Z].*\.$/);
  });

  it('stand in different places', () => {
    for (const a of PARTS)
      for (const b of PARTS)
        if (a.key < b.key)
          expect(distance(place(a.key), place(b.key)), `${a.key} ${b.key}`).toBeGreaterThan(20);
  });

  it('are those of its parts, and the bolts of its links when it has links', () => {
    const keys = (bike: typeof plainBike) => pointsOf(bike).map(({ key }) => key);
    const anyBolt = new Set(
      rearLayouts.flatMap(({ layout }) => drawnPoints(layout, 0).map(({ key }) => key)),
    );
    const mayTouch = TOUCH_KEYS as readonly PointKey[];
    const own = SKETCH_POINTS.map(({ key }) => key).filter(
      (key) => !anyBolt.has(key as LinkPointKey) && !mayTouch.includes(key),
    );
    expect(anyBolt.size).toBeGreaterThan(5);
    expect(keys(plainBike)).toEqual(own);
    for (const { layout } of rearLayouts) {
      const bike = withSwingarm(plainBike, { links: layout });
      const bolts = drawnPoints(layout, 0).map(({ key }) => key);
      expect(keys(bike).slice(PARTS.length).sort()).toEqual([...bolts].sort());
      const linked = standing(bike, plainSetup, { front: 40, rear: 30 });
      for (const { key } of SKETCH_POINTS)
        expect(pointPlace(linked, bike, key) !== null, key).toBe(keys(bike).includes(key));
    }
    expect(keys({ ...plainBike, drive: { ...plainBike.drive, kind: 'shaft' } })).not.toContain(
      'countershaft',
    );
  });

  it('are the parts that may touch too, once their half width is known', () => {
    const { touching } = plainBike.frame;
    for (const key of TOUCH_KEYS) {
      const bike = withFrame(plainBike, {
        touching: { ...touching, [key]: { x: 30, y: -200, halfWidth: 9 } },
      });
      expect(pointsOf(bike).map((point) => point.key)).toContain(key);
      const target = { x: 700, y: 90 };
      const moved = POINTS[key].move({ bike, setup: plainSetup, stance: on, target });
      if (!moved.ok) throw new Error(moved.reason);
      const place = pointPlace(on, moved.value.bike, key);
      expect(place?.x).toBeCloseTo(target.x, 9);
      expect(place?.y).toBeCloseTo(target.y, 9);
      expect(moved.value.bike.frame.touching[key].halfWidth).toBe(9);
    }
  });

  it('name the figures that place them', () => {
    const following = SKETCH_POINTS.flatMap(({ key, placedBy }) =>
      placedBy === null ? [] : [{ key, ...placedBy }],
    );
    expect(following.map(({ key }) => key)).toEqual(['rearAxle', 'rearPatch', 'frontAxle', 'frontPatch']);
    for (const { key, fields, tyre, words } of following) {
      expect(fields.length + (tyre === null ? 0 : 1), key).toBeGreaterThan(0);
      expect(words(plainBike), key).toMatch(/^[A-Z].*\.$/);
    }
  });

  it('stand where the stance has them', () => {
    expect(place('pivot')).toEqual(on.pose.pivot);
    expect(place('rearAxle')).toEqual({ x: 0, y: on.rearAxle.y });
    expect(place('frontPatch')).toEqual({ x: on.pose.wheelbase, y: 0 });
    const countershaft = onGround(on.pose, plainBike.frame.countershaft);
    expect(place('countershaft')).toEqual(countershaft);
    expect([countershaft.x, countershaft.y]).toEqual([on.countershaft.x, on.countershaft.y]);
    const seat = onGround(on.pose, plainBike.frame.seat);
    expect(place('seat')).toEqual(seat);
  });

  it('of the steering axis are a head tube’s length apart, at the rake', () => {
    const head = place('steeringHead');
    const foot = place('axisFoot');
    expect(distance(head, foot)).toBeCloseTo(plainBike.frame.headTubeLength, 9);
    expect(Math.atan2(foot.x - head.x, head.y - foot.y)).toBeCloseTo(on.rake, 12);
  });
});
