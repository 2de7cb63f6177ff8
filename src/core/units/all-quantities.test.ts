/** Tests of the table of quantities. */
import { describe, expect, it } from 'vitest';
import { QUANTITIES, shownUnit, unitWord, type QuantityKey } from './all-quantities.ts';
import { parseQuantity } from './parse-quantity.ts';

describe('the quantities', () => {
  it('that mechanics count in inches, feet and pounds are shown so, all others are the same in both systems', () => {
    const differing = Object.entries(QUANTITIES).filter(([, q]) => q.metric.symbol !== q.inch.symbol);
    expect(differing.map(([key]) => key)).toEqual([
      'length',
      'mass',
      'force',
      'rate',
      'speed',
      'pressure',
      'volume',
      'circle',
    ]);
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

  it('understand the unit they are shown in when it is typed', () => {
    for (const key of Object.keys(QUANTITIES) as QuantityKey[])
      for (const system of ['metric', 'inch'] as const) {
        const { symbol, inMetric } = shownUnit(key, system);
        expect(parseQuantity(`2 ${symbol}`, key, system), `${key} ${system}`).toEqual({
          ok: true,
          value: Number((2 * inMetric).toFixed(10)),
        });
      }
  });

  it('have no decimals when they count parts, and a change that a rider notices is one that shows', () => {
    for (const [key, { counted, indistinct, noticed, metric }] of Object.entries(QUANTITIES)) {
      expect(noticed, key).toBeGreaterThan(indistinct);
      if (counted !== null) expect([metric.digits, indistinct < 1], key).toEqual([0, true]);
    }
  });

  it('have a unit word in the schema: what is counted, or the unit of the file', () => {
    expect([unitWord('teeth'), unitWord('links'), unitWord('count')]).toEqual(['teeth', 'links', '1']);
    expect([unitWord('length'), unitWord('angle'), unitWord('rate')]).toEqual(['mm', 'deg', 'N/mm']);
  });
});
