/** Tests of motion ratio, wheel force and wheel rate. */
import { describe, expect, it } from 'vitest';
import { leverage, motionRatio, motionRatioSlope, wheelForce, wheelRate } from './leverage.ts';

describe('the wheel rate', () => {
  // Common worked rows of the trade: 300 at 0.8, 400 at 0.8, 300 at 0.75, any unit of rate.
  it.each([
    [300, 0.8, 192],
    [400, 0.8, 256],
    [300, 0.75, 168.75],
  ])('of a spring of %d at a motion ratio of %d that does not change is %d', (rate, ratio, wheel) => {
    expect(wheelRate(rate, 5000, ratio, 0)).toBeCloseTo(wheel, 10);
  });

  it('also has the spring’s force times the change of the ratio', () => {
    expect(wheelRate(100, 4000, 0.5, 0.002)).toBeCloseTo(25 + 8, 12);
  });
});

it('the wheel force is the spring’s force times the motion ratio', () => {
  expect(wheelForce(4000, 0.4)).toBe(1600);
});

describe('the motion ratio', () => {
  it('of a shock square to a level arm at half its length is a half, and does not change to first order', () => {
    // Shock length changes with the sine of the arm's angle: lever r · cos, its slope −r · sin.
    const at = (angle: number) => ({ lever: 300 * Math.cos(angle), leverSlope: -300 * Math.sin(angle) });
    for (const angle of [-0.2, 0, 0.3]) {
      expect(motionRatio(at(angle), 600, angle)).toBeCloseTo(0.5, 14);
      expect(motionRatioSlope(at(angle), 600, angle)).toBeCloseTo(0, 14);
    }
  });

  it('rises with travel where the lever grows as the arm swings up', () => {
    expect(motionRatioSlope({ lever: 200, leverSlope: -50 }, 600, 0)).toBeGreaterThan(0);
    expect(motionRatioSlope({ lever: 200, leverSlope: 50 }, 600, 0)).toBeLessThan(0);
  });

  it('has its inverse as leverage, 2.5 to 1 for 0.4, but none at a dead point', () => {
    expect(leverage(0.4)).toBe(2.5);
    expect(leverage(0)).toBeNull();
    expect(leverage(-1e-9)).toBeNull();
  });
});
