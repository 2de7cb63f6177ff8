/** Tests of the root of one equation between two places. */
import { describe, expect, it } from 'vitest';
import { solveBetween } from './solve-between.ts';

describe('the root between two places', () => {
  it('is found for straight, bent and steep equations, from either side', () => {
    expect(solveBetween((x) => 2 * x - 3, 0, 10, 1e-12)).toMatchObject({ status: 'solved' });
    expect(solveBetween((x) => 2 * x - 3, 0, 10, 1e-12).x).toBeCloseTo(1.5, 11);
    const cases: readonly (readonly [(x: number) => number, number, number, number])[] = [
      [(x) => x * x - 2, 0, 2, Math.SQRT2],
      [(x) => Math.cos(x), 0, 3, Math.PI / 2],
      [(x) => Math.exp(20 * x) - 1, -1, 1, 0],
      [(x) => 1 - x ** 9, 5, 0, 1],
    ];
    for (const [value, low, high, root] of cases) {
      const found = solveBetween(value, low, high, 1e-12);
      expect(found.status).toBe('solved');
      expect(found.x).toBeCloseTo(root, 10);
      expect(Math.abs(found.residual)).toBeLessThan(1e-9);
    }
  });

  it('may lie at an end', () => {
    expect(solveBetween((x) => x, 0, 1, 1e-12)).toMatchObject({ status: 'solved', x: 0 });
    expect(solveBetween((x) => x - 1, 0, 1, 1e-12)).toMatchObject({ status: 'solved', x: 1 });
  });

  it('is refused when both ends have the same sign, with the nearer end', () => {
    expect(solveBetween((x) => x * x + 1, -2, 1, 1e-12)).toMatchObject({
      status: 'noSignChange',
      x: 1,
      residual: 2,
    });
  });

  it('takes a dozen rounds where the equation is smooth, and shows a jump by what is left', () => {
    expect(solveBetween((x) => Math.exp(x) - 5, 0, 4, 1e-12).rounds).toBeLessThan(15);
    const jump = solveBetween((x) => (x < 0.3 ? -1 : 2), 0, 1, 1e-9);
    expect(jump.status).toBe('solved');
    expect(jump.x).toBeCloseTo(0.3, 8);
    expect(Math.abs(jump.residual)).toBeGreaterThanOrEqual(1);
  });

  it('is refused when the equation has no value', () => {
    expect(solveBetween((x) => Math.log(x), -1, 1, 1e-12).status).toBe('noValue');
    expect(solveBetween((x) => (x === 0 ? NaN : x), -1, 1, 1e-12).status).toBe('noValue');
  });
});
