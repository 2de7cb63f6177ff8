/** Tests of the sketch's points. */
import { describe, expect, it } from 'vitest';
import { plainBike, plainSetup } from '../../../tests/support/plain-bike.ts';
import { standing } from '../../../tests/support/standing.ts';
import { distance } from '../plane/point.ts';
import { inFrame, onGround, pointPlace, SKETCH_POINTS } from './points.ts';

const on = standing(plainBike, plainSetup, { front: 40, rear: 30 });
const place = (key: (typeof SKETCH_POINTS)[number]['key']) =>
  pointPlace(on, key, plainBike.frame.headTubeLength);

describe('the points of the sketch', () => {
  it('have keys and labels of their own and a sentence of help', () => {
    expect(new Set(SKETCH_POINTS.map((p) => p.key)).size).toBe(SKETCH_POINTS.length);
    expect(new Set(SKETCH_POINTS.map((p) => p.label)).size).toBe(SKETCH_POINTS.length);
    for (const { help } of SKETCH_POINTS) expect(help).toMatch(/^[A-Z].*\.$/);
  });

  it('stand in places of their own', () => {
    for (const a of SKETCH_POINTS)
      for (const b of SKETCH_POINTS)
        if (a.key < b.key)
          expect(distance(place(a.key), place(b.key)), `${a.key} ${b.key}`).toBeGreaterThan(20);
  });

  it('stand where the stance has them', () => {
    expect(place('pivot')).toEqual({ x: on.pose.originX, y: on.pose.originY });
    expect(place('rearAxle')).toEqual({ x: 0, y: on.rearAxleY });
    expect(place('frontPatch')).toEqual({ x: on.pose.wheelbase, y: 0 });
    const countershaft = onGround(on, plainBike.frame.countershaft.x, plainBike.frame.countershaft.y);
    expect(place('countershaft')).toEqual(countershaft);
    expect([countershaft.x, countershaft.y]).toEqual([on.countershaftX, on.countershaftY]);
    const seat = onGround(on, plainBike.frame.seat.x, plainBike.frame.seat.y);
    expect(place('seat')).toEqual(seat);
  });

  it('of the steering axis are a head tube’s length apart, at the rake', () => {
    const head = place('steeringHead');
    const foot = place('axisFoot');
    expect(distance(head, foot)).toBeCloseTo(plainBike.frame.headTubeLength, 9);
    expect(Math.atan2(foot.x - head.x, head.y - foot.y)).toBeCloseTo(on.rake, 12);
  });
});

it('from frame to ground and back is the same place', () => {
  for (const p of [
    { x: 0, y: 0 },
    { x: 520, y: 530 },
    { x: -300, y: 12.5 },
  ]) {
    const back = inFrame(on, onGround(on, p.x, p.y));
    expect(back.x).toBeCloseTo(p.x, 10);
    expect(back.y).toBeCloseTo(p.y, 10);
  }
});
