/** Tests of the two parts of the squat slope. */
import { describe, expect, it } from 'vitest';
import { chainSlope, swingarmSlope } from './squat-slope.ts';

describe('the balance of forces on arm and wheel', () => {
  it('gives the swingarm the slope from patch to pivot', () => {
    expect(swingarmSlope(570, 420)).toBeCloseTo(420 / 570, 15);
  });

  it('gives the chain a pull down when it passes above the pivot, up below, nothing through it', () => {
    expect(chainSlope(570, 40, 315, 113.8)).toBeLessThan(0);
    expect(chainSlope(570, -40, 315, 113.8)).toBeGreaterThan(0);
    expect(chainSlope(570, 0, 315, 113.8)).toBe(-0);
  });

  it('has no moment left about the pivot with a load along the slope, for any thrust', () => {
    const [pivotX, pivotY, lever, wheel, sprocket] = [560, 410, 45, 320, 110];
    const thrust = 900;
    const load = thrust * (swingarmSlope(pivotX, pivotY) + chainSlope(pivotX, lever, wheel, sprocket));
    const pull = (thrust * wheel) / sprocket;
    expect(thrust * pivotY - load * pivotX - pull * lever).toBeCloseTo(0, 8);
  });
});
