/** Tests of the prior of the motion ratio: its parts belong together, and it wanders as far as it says. */
import { describe, expect, it } from 'vitest';
import { priorCovariance, type Order } from './ratio-prior.ts';

const RATIO = 0.4;
const TRAVEL = 130;
const covariance = (i: Order, u: number, j: Order, v: number): number =>
  priorCovariance({ order: i, at: u }, { order: j, at: v }, RATIO, TRAVEL);

describe('the prior', () => {
  it('has each order as the derivative of the one before, in either figure', () => {
    const h = 1e-3;
    for (const [u, v] of [
      [20, 90],
      [100, 100],
      [130, 3],
    ])
      for (const j of [0, 1, 2] as const)
        for (const i of [0, 1] as const) {
          const next = (i + 1) as Order;
          const slope = (covariance(i, u + h, j, v) - covariance(i, u - h, j, v)) / (2 * h);
          const exact = covariance(next, u, j, v);
          expect(Math.abs(slope - exact)).toBeLessThan(1e-6 * Math.max(1, Math.abs(exact)));
          expect(covariance(j, v, next, u)).toBeCloseTo(exact, 12);
        }
  });

  it('knows the stroke exactly while the wheel hangs', () => {
    for (const j of [0, 1, 2] as const) expect(Math.abs(covariance(0, 0, j, 77))).toBeLessThan(1e-9);
  });

  it('lets the ratio wander by about 15 % of its mean between hanging and the end, apart from its level', () => {
    const [start, end] = [covariance(1, 0, 1, 0), covariance(1, TRAVEL, 1, TRAVEL)];
    const level = (0.5 * RATIO) ** 2;
    const wander = Math.sqrt((start + end) / 2 - level) / RATIO;
    expect(wander).toBeGreaterThan(0.13);
    expect(wander).toBeLessThan(0.17);
  });
});
