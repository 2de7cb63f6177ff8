/** Tests of how far adjusters reach on a bike, and in which steps. */
import { describe, expect, it } from 'vitest';
import { plainBike, plainSetup, withSwingarm } from '../../../tests/support/plain-bike.ts';
import { adjusterOf, ADJUSTERS, type NumberAdjuster } from '../adjusters/all-adjusters.ts';
import { adjusterRange, stepAdjuster } from './adjuster-range.ts';

const asSet = { bike: plainBike, setup: plainSetup };
const numbers = ADJUSTERS.filter((adjuster): adjuster is NumberAdjuster => 'range' in adjuster);

it.each(numbers.map((adjuster) => [adjuster.key, adjuster] as const))(
  '%s holds the plain setup, in steps above zero',
  (key, adjuster) => {
    const { least, most, step } = adjusterRange(adjuster, plainBike, plainSetup);
    expect(step).toBeGreaterThan(0);
    expect(plainSetup[key]).toBeGreaterThanOrEqual(least);
    expect(plainSetup[key]).toBeLessThanOrEqual(most);
  },
);

describe('an adjuster stepped', () => {
  it('moves by its steps without rounding noise', () => {
    const adjuster = adjusterOf('headAngleCupsDeg');
    let value = 0;
    for (let i = 0; i < 10; i++) value = stepAdjuster(adjuster, asSet, value, 1);
    expect(value).toBe(2.5);
    expect(stepAdjuster(adjusterOf('clampOffset'), asSet, 30.1, 2)).toBe(31.1);
  });

  it('stops at both ends of its range', () => {
    expect(stepAdjuster(adjusterOf('axlePosition'), asSet, 29.5, 3)).toBe(plainBike.swingarm.slot);
    expect(stepAdjuster(adjusterOf('frontTravelUsed'), asSet, 1, -5)).toBe(0);
    expect(stepAdjuster(adjusterOf('rearTravelUsed'), asSet, 129, 5)).toBe(plainBike.swingarm.wheelTravel);
  });

  it('has no fewer front teeth than go over the countershaft', () => {
    expect(adjusterRange(adjusterOf('frontTeeth'), plainBike, plainSetup).least).toBe(
      plainBike.drive.leastFrontTeeth,
    );
  });
});

describe('an adjuster counted as the workshop counts', () => {
  it('moves the shock by half turns of its thread, and by half a millimetre without one', () => {
    const adjuster = adjusterOf('shockLength');
    expect(adjusterRange(adjuster, plainBike, plainSetup).step).toBe(0.75);
    expect(adjuster.aside?.(3, plainBike)).toEqual({ amount: 2, counted: 'turns' });
    const plain = withSwingarm(plainBike, { shockThread: null });
    expect(adjusterRange(adjuster, plain, plainSetup).step).toBe(0.5);
    expect(adjuster.aside?.(3, plain)).toBeNull();
  });

  it('gives the axle’s place in links: half a pitch each', () => {
    expect(adjusterOf('axlePosition').aside?.(15.875, plainBike)).toEqual({ amount: 2, counted: 'links' });
  });
});
