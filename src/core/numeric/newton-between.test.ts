/** Tests of the root between two places by safeguarded Newton. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import '../../../tests/support/cases.ts';
import { newtonBetween } from './newton-between.ts';

describe('the root between two places', () => {
  it('of a cubic is found whichever way it runs', () => {
    fc.assert(
      fc.property(fc.double({ min: -0.9, max: 0.9, noNaN: true }), fc.constantFrom(1, -1), (root, sign) => {
        const found = newtonBetween(
          (x) => ({ value: sign * (x ** 3 - root ** 3 + x - root), slope: sign * (3 * x * x + 1) }),
          -1,
          1,
          1e-14,
        );
        expect(found.status).toBe('solved');
        expect(found.x).toBeCloseTo(root, 13);
      }),
    );
  });

  it('is found beside a square root, where the slope has no bound', () => {
    const found = newtonBetween(
      (x) => ({ value: Math.sqrt(x) - 1e-6, slope: 0.5 / Math.sqrt(x) }),
      0,
      1,
      1e-18,
    );
    expect(found.status).toBe('solved');
    expect(found.x).toBeCloseTo(1e-12, 20);
  });

  it('is found from a start where the slope is flat, wrong or missing', () => {
    for (const slope of [0, -5, NaN]) {
      const found = newtonBetween((x) => ({ value: x * x * x - 0.001, slope }), -1, 1, 1e-15);
      expect(found).toMatchObject({ status: 'solved' });
      expect(found.x).toBeCloseTo(0.1, 12);
    }
  });

  it('is found at an end, without a round', () => {
    expect(newtonBetween((x) => ({ value: x, slope: 1 }), 0, 1, 0)).toMatchObject({ x: 0, rounds: 0 });
    expect(newtonBetween((x) => ({ value: x - 1, slope: 1 }), 0, 1, 0)).toMatchObject({ x: 1, rounds: 0 });
  });

  it('takes few rounds on a smooth curve', () => {
    const found = newtonBetween((x) => ({ value: Math.exp(x) - 2, slope: Math.exp(x) }), 0, 1, 1e-15);
    expect(found.x).toBeCloseTo(Math.LN2, 14);
    expect(found.rounds).toBeLessThan(8);
  });

  it('is found at a multiple root, where Newton alone creeps', () => {
    const found = newtonBetween((x) => ({ value: x ** 21, slope: 21 * x ** 20 }), -1, 2, 1e-300);
    expect(found.status).toBe('solved');
    expect(Math.abs(found.x)).toBeLessThan(1e-14);
  });

  it('is found to the last digit even when no number makes the value zero', () => {
    for (const square of [2, 3, 5, 6, 7]) {
      const found = newtonBetween((x) => ({ value: x * x - square, slope: 2 * x }), 0, 4, 0);
      expect(found.status).toBe('solved');
      expect(Math.abs(found.x - Math.sqrt(square))).toBeLessThan(1e-15);
      expect(found.rounds).toBeLessThan(12);
    }
    // Without a slope of any use, by halving until nothing lies between.
    const halved = newtonBetween((x) => ({ value: x * x - 2, slope: 0 }), 0, 4, 0);
    expect(halved).toMatchObject({ status: 'solved' });
    expect(Math.abs(halved.x - Math.SQRT2)).toBeLessThan(1e-15);
    expect(halved.rounds).toBeLessThan(70);
  });

  it('has no answer when both ends have the same sign or there is no value', () => {
    expect(newtonBetween((x) => ({ value: x + 2, slope: 1 }), -1, 1, 0).status).toBe('noSignChange');
    expect(newtonBetween(() => null, -1, 1, 0).status).toBe('noValue');
    const hole = (x: number) => (Math.abs(x) < 0.5 ? null : { value: x, slope: 1 });
    expect(newtonBetween(hole, -1, 1.5, 0).status).toBe('noValue');
  });
});
