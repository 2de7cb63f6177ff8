/** Tests of parts that add up as they are written. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import '../../../tests/support/cases.ts';
import { sharedSteps } from './shared-steps.ts';

const sum = (parts: readonly number[]): number => parts.reduce((all, part) => all + part, 0);

describe('the parts of a change', () => {
  it('get the steps that rounding leaves over where most was cut', () => {
    expect(sharedSteps([2.6, 2.6, 4.8], 10)).toEqual([3, 2, 5]);
    expect(sharedSteps([-97.4, -18.8], -116)).toEqual([-97, -19]);
  });

  it('add up to the total, each within two steps of what it is', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: -500, max: 500, noNaN: true }), { minLength: 1, maxLength: 7 }),
        fc.integer({ min: -1, max: 1 }),
        (parts, off) => {
          const total = Math.round(sum(parts)) + off;
          const whole = sharedSteps(parts, total);
          expect(sum(whole)).toBe(total);
          const moved = parts.filter((part) => part !== 0).length;
          whole.forEach((steps, i) => expect(Math.abs(steps - parts[i])).toBeLessThan(moved < 3 ? 2.5 : 2));
        },
      ),
    );
  });

  it('leave a cause out that did nothing', () => {
    expect(sharedSteps([0, 1.4, 1.4], 3)).toEqual([0, 2, 1]);
  });
});
