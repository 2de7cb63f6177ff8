/** Tests of the table of quantities. */
import { describe, expect, it } from 'vitest';
import { QUANTITIES, shownUnit } from './quantity.ts';

describe('the quantities', () => {
  it('that mechanics count in inches and pounds are shown so, all others alike in both systems', () => {
    const differing = Object.entries(QUANTITIES).filter(([, q]) => q.metric.symbol !== q.inch.symbol);
    expect(differing.map(([key]) => key)).toEqual(['length', 'mass', 'force', 'rate', 'speed']);
  });

  it('turn the core’s radians into degrees and leave everything else', () => {
    expect(QUANTITIES.angle.fromCore(Math.PI / 6)).toBeCloseTo(30, 12);
    for (const [key, quantity] of Object.entries(QUANTITIES))
      if (key !== 'angle') expect(quantity.fromCore(7)).toBe(7);
  });

  it('show an inch as 25.4 mm and a pound as 0.45359237 kg', () => {
    expect(25.4 * shownUnit('length', 'inch').perMetric).toBeCloseTo(1, 15);
    expect(0.45359237 * shownUnit('mass', 'inch').perMetric).toBeCloseTo(1, 15);
    expect(shownUnit('length', 'metric').perMetric).toBe(1);
  });

  it('show a pound-force as 4.4482216152605 N and a rate of 1 lbf/in as 0.1751268 N/mm', () => {
    expect(0.45359237 * 9.80665 * shownUnit('force', 'inch').perMetric).toBeCloseTo(1, 15);
    // Published tables of conversion give 0.1751268 (NIST SP 811, appendix B, from memory).
    expect(0.1751268 * shownUnit('rate', 'inch').perMetric).toBeCloseTo(1, 6);
  });
});
