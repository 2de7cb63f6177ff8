/** The rocker loop against a textbook's four-bars and slider-cranks. */
import { describe, expect, it } from 'vitest';
import { loopAt, type RockerLoop } from '../../src/core/linkage/rocker-loop.ts';
import { degrees, radians } from '../../src/core/units/convert.ts';

/** Crank and rocker pivoted on the x axis, the shock of no interest. */
function fourBar(crank: number, coupler: number, rocker: number, ground: number, side: 1 | -1): RockerLoop {
  return {
    pivot: { x: ground, y: 0 },
    rodEnd: { x: crank, y: 0 },
    rodLength: coupler,
    toRod: { x: 0, y: rocker },
    toShock: { x: rocker, y: 0 },
    side,
    far: { x: 0, y: -500 },
    farTurns: false,
  };
}

/** Angles of coupler and rocker from the x axis, degrees. */
function angles(loop: RockerLoop, crankDeg: number): { coupler: number; rocker: number } {
  const at = loopAt(loop, radians(crankDeg));
  if (at === null) throw new Error('The four-bar does not close');
  const tip = { x: loop.pivot.x + at.toRod.x, y: loop.pivot.y + at.toRod.y };
  return {
    coupler: degrees(Math.atan2(tip.y - at.rodEnd.y, tip.x - at.rodEnd.x)),
    rocker: degrees(Math.atan2(at.toRod.y, at.toRod.x)),
  };
}

// Source: R. L. Norton, Design of Machinery, position analysis, examples 4-1 and 4-2, problem 4-1a; from memory. Recomputed and agrees; the printed digits are the tolerance.
describe('a textbook’s four-bars', () => {
  it('example 4-1: 40, 120, 80 on 100, crank at 40°, open', () => {
    const { coupler, rocker } = angles(fourBar(40, 120, 80, 100, -1), 40);
    expect(coupler).toBeCloseTo(20.298, 3);
    expect(rocker).toBeCloseTo(57.325, 3);
  });

  it('example 4-1 crossed', () => {
    const { coupler, rocker } = angles(fourBar(40, 120, 80, 100, 1), 40);
    expect(coupler).toBeCloseTo(-60.98, 2);
    // Exactly it is −98.005; the book rounds on its way there.
    expect(Math.abs(rocker + 98.01)).toBeLessThan(0.01);
  });

  it('problem 4-1a: 2, 7, 9 on 6, crank at 30°, open and crossed', () => {
    const open = angles(fourBar(2, 7, 9, 6, -1), 30);
    expect(open.coupler).toBeCloseTo(88.84, 2);
    expect(open.rocker).toBeCloseTo(117.29, 2);
    const crossed = angles(fourBar(2, 7, 9, 6, 1), 30);
    expect(crossed.coupler).toBeCloseTo(-115.21, 2);
    expect(crossed.rocker).toBeCloseTo(-143.66, 2);
  });

  // A slider is the end of a rocker so long, 1 km, that its arc is straight to 0.0004 mm over the 27 mm used here.
  it('example 4-2: slider of crank 40 and coupler 120, offset −20, crank at 60°: 126.84 and 152.91°', () => {
    const long = 1e6;
    const loop: RockerLoop = {
      ...fourBar(40, 120, long, 100, -1),
      pivot: { x: 100, y: -20 - long },
      toRod: { x: 0, y: long },
    };
    const at = loopAt(loop, radians(60));
    if (at === null) throw new Error('The slider-crank does not close');
    const slider = { x: 100 + at.toRod.x, y: -20 - long + at.toRod.y };
    expect(slider.x).toBeCloseTo(126.84, 2);
    expect(slider.y).toBeCloseTo(-20, 3);
    // The book counts the coupler's angle at the slider.
    expect(degrees(Math.atan2(at.rodEnd.y - slider.y, at.rodEnd.x - slider.x))).toBeCloseTo(152.91, 2);
  });
});
