/** Tests of the exact conversions. */
import { expect, it } from 'vitest';
import { degrees, KG_PER_POUND, MM_PER_INCH, radians, STANDARD_GRAVITY } from './convert.ts';

// International yard and pound agreement, 1959; 3rd General Conference on Weights and Measures, 1901.
it('inch, pound and standard gravity are the agreed numbers', () => {
  expect(MM_PER_INCH).toBe(25.4);
  expect(KG_PER_POUND).toBe(0.45359237);
  expect(STANDARD_GRAVITY).toBe(9.80665);
});

it('degrees and radians are inverses, and half a turn is 180°', () => {
  expect(radians(180)).toBe(Math.PI);
  expect(degrees(Math.PI / 2)).toBe(90);
  for (const deg of [-720, -12.7, 0, 0.1, 24, 359]) expect(degrees(radians(deg))).toBeCloseTo(deg, 12);
});
