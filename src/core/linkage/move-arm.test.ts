/** Tests of a moved pivot or axle: every bolt stays where it was, and the arm hangs as wanted. */
import { describe, expect, it } from 'vitest';
import { rearLayouts } from '../../../tests/support/rear-layouts.ts';
import { madeLinks, madeShock } from '../../../tests/support/rear-made.ts';
import { distance } from '../plane/point.ts';
import { AS_DELIVERED } from './link-adjustments.ts';
import { linkPoints } from './link-points.ts';
import { moveArm } from './move-arm.ts';

const pivot = { x: 6, y: -4 };
const arm = { angle: 0.1, newAngle: 0.13, pivot, newHanging: 0.2 };

describe('a swingarm with its pivot moved', () => {
  it.each(rearLayouts)('$name: no bolt moves, and the shock hangs the arm as wanted', ({ layout }) => {
    const adjusters = {
      ...AS_DELIVERED,
      shockLength: 4,
      shockMountShim: 2,
      linkLength: layout.kind === 'direct' ? 0 : 1,
      pivotForward: 1,
      pivotUp: 2,
    };
    const made = moveArm(layout, arm, adjusters);
    if ('ok' in made) throw new Error(made.reason);
    const before = linkPoints(madeLinks(layout, adjusters), arm.angle);
    const after = linkPoints(madeLinks(made, adjusters), arm.newAngle);
    if (before === null || after === null) throw new Error('The links do not close');
    expect(after.map(({ key, part }) => [key, part])).toEqual(before.map(({ key, part }) => [key, part]));
    after.forEach(({ place: { x, y } }, i) =>
      expect(distance({ x: x + pivot.x, y: y + pivot.y }, before[i].place)).toBeLessThan(1e-9),
    );
    const links = madeLinks(made, adjusters);
    expect(madeShock(links, arm.newHanging).length).toBeCloseTo(links.fullLength, 9);
    expect(made.shock.fullLength - made.shock.closedLength).toBeCloseTo(
      layout.shock.fullLength - layout.shock.closedLength,
      9,
    );
  });

  it('is refused where the links cannot close', () => {
    const { layout } = rearLayouts[2];
    expect(moveArm(layout, { ...arm, newHanging: 3 }, AS_DELIVERED)).toMatchObject({ ok: false });
    expect(moveArm(layout, { ...arm, angle: NaN }, AS_DELIVERED)).toMatchObject({
      reason: 'inputNotANumber',
    });
  });
});
