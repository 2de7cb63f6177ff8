/** Tests of the third corner of a triangle. */
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { cases } from '../../../tests/support/cases.ts';
import { thirdCorner } from './triangle.ts';

const side = fc.constantFrom<1 | -1>(1, -1);
const length = fc.integer({ min: 1000, max: 300_000 }).map((micrometres) => micrometres / 1000);
const place = fc.integer({ min: -300_000, max: 300_000 }).map((micrometres) => micrometres / 1000);

it('the third corner has both distances and lies on its side', () => {
  let met = 0;
  fc.assert(
    fc.property(place, place, length, length, side, (x, y, near, far, which) => {
      const corner = thirdCorner(x, y, near * near, far * far, which);
      const base = Math.hypot(x, y);
      const reach = base <= near + far && base >= Math.abs(near - far);
      if (Math.abs(base - near - far) > 1e-9 && Math.abs(base - Math.abs(near - far)) > 1e-9)
        expect(corner !== null).toBe(reach);
      if (corner === null || base < 1) return;
      met++;
      expect(Math.hypot(corner.x, corner.y)).toBeCloseTo(near, 6);
      expect(Math.hypot(corner.x - x, corner.y - y)).toBeCloseTo(far, 6);
      expect(which * (x * corner.y - y * corner.x)).toBeGreaterThanOrEqual(0);
    }),
    { numRuns: cases(1000) },
  );
  expect(met).toBeGreaterThan(cases(100));
});

it('a triangle of 3, 4 and 5 has its right angle where it belongs', () => {
  const corner = thirdCorner(5, 0, 9, 16, 1);
  expect(corner?.x).toBeCloseTo(1.8, 14);
  expect(corner?.y).toBeCloseTo(2.4, 14);
  expect(thirdCorner(5, 0, 9, 16, -1)?.y).toBeCloseTo(-2.4, 14);
});

it('there is no third corner when the sides do not reach, or both known corners are one', () => {
  expect(thirdCorner(10, 0, 9, 9, 1)).toBeNull();
  expect(thirdCorner(1, 0, 100, 4, 1)).toBeNull();
  expect(thirdCorner(0, 0, 9, 9, 1)).toBeNull();
  expect(thirdCorner(NaN, 0, 9, 9, 1)).toBeNull();
});
