/** Tests of the fair split: parts that add up, and nothing for what did not change. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import '../../../tests/support/cases.ts';
import { fairSplit } from './fair-split.ts';

const number = fc.double({ min: -10, max: 10, noNaN: true });
const inputs = fc.array(number, { minLength: 4, maxLength: 4 });
const curved = ([a, b, c, d]: readonly number[]) => a * b + Math.sin(c) * d + a * c * d;

describe('a fair split', () => {
  it('adds up to the whole change', () => {
    fc.assert(
      fc.property(inputs, inputs, (before, after) => {
        const sum = fairSplit(curved, before, after).reduce((a, b) => a + b, 0);
        expect(sum).toBeCloseTo(curved(after) - curved(before), 8);
      }),
    );
  });

  it('gives an input that did not change exactly zero', () => {
    fc.assert(
      fc.property(inputs, inputs, (before, after) => {
        const kept = [after[0], before[1], after[2], before[3]];
        const parts = fairSplit(curved, before, kept);
        expect([parts[1], parts[3]]).toEqual([0, 0]);
      }),
    );
  });

  it('gives each input its own change when they do not act on one another', () => {
    const parts = fairSplit(([a, b, c]) => 2 * a - 3 * b + c * c, [1, 1, 1], [2, 3, 4]);
    expect(parts[0]).toBeCloseTo(2, 12);
    expect(parts[1]).toBeCloseTo(-6, 12);
    expect(parts[2]).toBeCloseTo(15, 12);
  });

  it('shares what two inputs do together in halves', () => {
    expect(fairSplit(([a, b]) => a * b, [0, 0], [2, 3])).toEqual([3, 3]);
  });

  // Shapley value of three players, worked by hand for f = abc from (1, 1, 1) to (2, 2, 2): a third of 7 each.
  it('treats equal inputs equally', () => {
    for (const share of fairSplit(([a, b, c]) => a * b * c, [1, 1, 1], [2, 2, 2]))
      expect(share).toBeCloseTo(7 / 3, 12);
  });

  it('of no change at all is all zeros', () => {
    expect(fairSplit(curved, [1, 2, 3, 4], [1, 2, 3, 4])).toEqual([0, 0, 0, 0]);
  });
});
