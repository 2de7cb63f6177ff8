/** Tests of the monotone curve: through its points, rising, smooth, and invertible. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cases } from '../../../tests/support/cases.ts';
import { curveAt, curveInverse, monotoneCurve, type MonotoneCurve } from './monotone-curve.ts';

function curveThrough(points: readonly { readonly x: number; readonly y: number }[]): MonotoneCurve {
  const curve = monotoneCurve(points);
  if (!curve.ok) throw new Error(curve.reason);
  return curve.value;
}

const step = fc.double({ min: 0.1, max: 50, noNaN: true });
const rising = fc.array(fc.record({ dx: step, dy: step }), { minLength: 2, maxLength: 9 }).map((steps) => {
  let x = -20;
  let y = -20;
  return steps.map(({ dx, dy }) => ({ x: (x += dx), y: (y += dy) }));
});
const part = fc.double({ min: -0.2, max: 1.2, noNaN: true });

/** The x at a part of the way through a curve's points, or a little outside. */
function along(curve: MonotoneCurve, t: number): number {
  return curve.x[0] + t * (curve.x[curve.x.length - 1] - curve.x[0]);
}

describe('a monotone curve', () => {
  it('passes through its points', () => {
    fc.assert(
      fc.property(rising, (points) => {
        const curve = curveThrough(points);
        for (const { x, y } of points) expect(curveAt(curve, x).value).toBeCloseTo(y, 9);
      }),
    );
  });

  it('rises everywhere, and between two points stays between their heights', () => {
    fc.assert(
      fc.property(rising, part, part, (points, s, t) => {
        const curve = curveThrough(points);
        const [low, high] = [along(curve, Math.min(s, t)), along(curve, Math.max(s, t))];
        expect(curveAt(curve, high).value).toBeGreaterThanOrEqual(curveAt(curve, low).value - 1e-9);
        expect(curveAt(curve, low).slope).toBeGreaterThan(-1e-12);
        const i = points.findIndex((p, at) => p.x <= low && low < (points[at + 1]?.x ?? -Infinity));
        if (i < 0) return;
        expect(curveAt(curve, low).value).toBeGreaterThanOrEqual(points[i].y - 1e-9);
        expect(curveAt(curve, low).value).toBeLessThanOrEqual(points[i + 1].y + 1e-9);
      }),
    );
  });

  it('has the slope that central differences find, also across its points and outside them', () => {
    fc.assert(
      fc.property(rising, part, (points, t) => {
        const curve = curveThrough(points);
        const at = along(curve, t);
        const h = 1e-5;
        const difference = (curveAt(curve, at + h).value - curveAt(curve, at - h).value) / (2 * h);
        expect(Math.abs(curveAt(curve, at).slope - difference)).toBeLessThan(0.02 * Math.max(1, difference));
      }),
    );
  });

  it('has the bend that central differences of its slope find between two points, and none outside', () => {
    fc.assert(
      fc.property(rising, fc.double({ min: 0.01, max: 0.99, noNaN: true }), (points, t) => {
        const curve = curveThrough(points);
        for (let i = 1; i < curve.x.length; i++) {
          const at = curve.x[i - 1] + t * (curve.x[i] - curve.x[i - 1]);
          const h = 1e-5 * (curve.x[i] - curve.x[i - 1]);
          const difference = (curveAt(curve, at + h).slope - curveAt(curve, at - h).slope) / (2 * h);
          // A steep piece between flat ends bends by its chord, not by its ends’ slopes.
          const width = curve.x[i] - curve.x[i - 1];
          const size = Math.max(...curve.slope, (curve.y[i] - curve.y[i - 1]) / width) / width;
          expect(Math.abs(curveAt(curve, at).bend - difference)).toBeLessThan(1e-6 * Math.max(1, size));
        }
        expect(curveAt(curve, curve.x[0] - 1).bend).toBe(0);
        expect(curveAt(curve, curve.x[curve.x.length - 1] + 1).bend).toBe(0);
      }),
    );
  });

  it('has one slope on both sides of a point', () => {
    fc.assert(
      fc.property(rising, (points) => {
        const curve = curveThrough(points);
        for (const { x } of points)
          expect(curveAt(curve, x - 1e-9).slope).toBeCloseTo(curveAt(curve, x + 1e-9).slope, 4);
      }),
    );
  });

  it('gives back x from its height, inside and outside its points', () => {
    fc.assert(
      fc.property(rising, part, (points, t) => {
        const curve = curveThrough(points);
        const height = curveAt(curve, along(curve, t)).value;
        expect(curveAt(curve, curveInverse(curve, height)).value).toBeCloseTo(height, 9);
      }),
      { numRuns: cases(1000) },
    );
  });

  it('of two points, or of points on a line, is that line', () => {
    const two = curveThrough([
      { x: 0, y: 0 },
      { x: 100, y: 50 },
    ]);
    const many = curveThrough([0, 10, 35, 60, 100].map((x) => ({ x, y: x / 2 })));
    for (const curve of [two, many])
      for (const x of [-20, 0, 13, 50, 100, 120]) {
        expect(curveAt(curve, x).value).toBeCloseTo(x / 2, 12);
        expect(curveAt(curve, x).slope).toBeCloseTo(0.5, 12);
        expect(curveInverse(curve, x / 2)).toBeCloseTo(x, 11);
      }
  });

  // Slopes by the three-point weighted harmonic mean, Fritsch and Butland 1984, worked by hand:
  // steps 1 and 2, chords 1 and 2, so 2·2 + 1 = 5 before, 2 + 2·1 = 4 after, slope 9 / (5/1 + 4/2) = 9/7.
  it('has the weighted harmonic mean of its chords as slope at an inner point', () => {
    const curve = curveThrough([
      { x: 0, y: 0 },
      { x: 1, y: 1 },
      { x: 3, y: 5 },
    ]);
    expect(curve.slope[1]).toBeCloseTo(9 / 7, 14);
  });

  it('keeps a slope above zero at its ends, so that it has an inverse outside', () => {
    const curve = curveThrough([
      { x: 0, y: 0 },
      { x: 1, y: 0.01 },
      { x: 2, y: 5 },
    ]);
    expect(curve.slope[0]).toBeGreaterThan(0);
    expect(curveAt(curve, curveInverse(curve, -3)).value).toBeCloseTo(-3, 9);
  });
});

describe('points carry no monotone curve', () => {
  const reason = (points: { x: number; y: number }[]) => {
    const curve = monotoneCurve(points);
    return curve.ok ? 'curve' : curve.reason;
  };

  it('when there are fewer than two', () => {
    expect(reason([])).toBe('tooFewPoints');
    expect(reason([{ x: 0, y: 0 }])).toBe('tooFewPoints');
  });

  it('when a coordinate is not a number', () => {
    expect(
      reason([
        { x: 0, y: NaN },
        { x: 1, y: 1 },
      ]),
    ).toBe('notANumber');
    expect(
      reason([
        { x: 0, y: 0 },
        { x: Infinity, y: 1 },
      ]),
    ).toBe('notANumber');
  });

  it('when they stand still or turn back in either direction', () => {
    const zero = { x: 0, y: 0 };
    for (const next of [
      { x: 1, y: 0 },
      { x: 0, y: 1 },
      { x: 1, y: -1 },
      { x: -1, y: 1 },
    ])
      expect(reason([zero, next])).toBe('notIncreasing');
  });
});
