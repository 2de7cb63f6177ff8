/** Tests of circles. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cases } from '../../../tests/support/cases.ts';
import { signedDistance } from '../../../tests/support/signed-distance.ts';
import { outerTangent, type Circle } from './circle.ts';
import { distance } from './point.ts';

const coordinate = fc.double({ min: -500, max: 500, noNaN: true });
const circle: fc.Arbitrary<Circle> = fc.record({
  centre: fc.record({ x: coordinate, y: coordinate }),
  radius: fc.double({ min: 1, max: 200, noNaN: true }),
});

describe('the outer tangents of two circles', () => {
  it('touch both circles and leave both on one side', () => {
    let drawn = 0;
    fc.assert(
      fc.property(
        circle,
        circle,
        fc.constantFrom('left' as const, 'right' as const),
        (first, second, side) => {
          const tangent = outerTangent(first, second, side);
          // Circles that all but touch from within have a tangent too short to point anywhere.
          if (tangent === 'oneInsideOther' || distance(tangent.from, tangent.to) < 1) return;
          const towards = side === 'left' ? -1 : 1;
          expect(signedDistance(tangent, first.centre)).toBeCloseTo(towards * first.radius, 6);
          expect(signedDistance(tangent, second.centre)).toBeCloseTo(towards * second.radius, 6);
          expect(distance(tangent.from, first.centre)).toBeCloseTo(first.radius, 8);
          expect(distance(tangent.to, second.centre)).toBeCloseTo(second.radius, 8);
          drawn++;
        },
      ),
      { numRuns: cases(1000) },
    );
    expect(drawn).toBeGreaterThan(cases(200));
  });

  it('do not exist when one circle lies within the other or they share their centre', () => {
    const big = { centre: { x: 0, y: 0 }, radius: 10 };
    expect(outerTangent(big, { centre: { x: 2, y: 0 }, radius: 3 }, 'left')).toBe('oneInsideOther');
    expect(outerTangent(big, big, 'left')).toBe('oneInsideOther');
  });

  it('are level above and below circles of one size side by side', () => {
    const near = { centre: { x: 0, y: 0 }, radius: 5 };
    const far = { centre: { x: 100, y: 0 }, radius: 5 };
    expect(outerTangent(near, far, 'left')).toEqual({ from: { x: 0, y: 5 }, to: { x: 100, y: 5 } });
    expect(outerTangent(near, far, 'right')).toEqual({ from: { x: 0, y: -5 }, to: { x: 100, y: -5 } });
  });
});
