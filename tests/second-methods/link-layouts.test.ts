/** Every layout of rear links against a constraint solver that knows no motorcycles. */
import { describe, expect, it } from 'vitest';
import { linkPoints } from '../../src/core/linkage/link-points.ts';
import { distance } from '../../src/core/plane/point.ts';
import { linkSketch } from '../support/link-sketch.ts';
import { ARM_LENGTH, rearLayouts } from '../support/rear-layouts.ts';
import { evenly, madeLinks, madeRear, madeShock, rearAt } from '../support/rear-made.ts';

/** How far the constraint solver may be from the core, mm. */
const AGREED = 1e-6;

describe('every layout at 50 places of its travel, by a constraint solver', () => {
  it.each(rearLayouts)('$name has every bolt where the core has it', async ({ layout }) => {
    const of = madeLinks(layout);
    const rear = madeRear(layout);
    const sketch = await linkSketch(layout, ARM_LENGTH);
    const placesAt = (angle: number) => {
      const points = linkPoints(of, angle);
      if (points === null) throw new Error('The links do not close');
      return new Map<string, { x: number; y: number }>([
        ...points.map(({ key, place }) => [key, place] as const),
        ['axle', { x: -ARM_LENGTH * Math.cos(angle), y: -ARM_LENGTH * Math.sin(angle) }],
      ]);
    };
    let worst = 0;
    for (const travel of evenly(0, rear.wheelTravel, 50)) {
      const { angle } = rearAt(rear, travel);
      sketch.setUp(placesAt(angle + 0.02));
      sketch.solveAt(-ARM_LENGTH * Math.sin(angle));
      for (const [key, place] of placesAt(angle)) worst = Math.max(worst, distance(sketch.place(key), place));
      const ends =
        layout.kind === 'direct' ? ['shockOnFrame', 'shockOnArm'] : ['shockOnRocker', 'shockFarEnd'];
      const length = distance(sketch.place(ends[0]), sketch.place(ends[1]));
      worst = Math.max(worst, Math.abs(length - madeShock(of, angle).length));
    }
    sketch.close();
    expect(worst).toBeLessThan(AGREED);
  });
});
