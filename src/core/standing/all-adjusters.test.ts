/** Tests of the adjusters: one for each thing a setup says, with sensible steps. */
import { describe, expect, it } from 'vitest';
import { plainBike, plainSetup, withSwingarm } from '../../../tests/support/plain-bike.ts';
import { ADJUSTER_GROUPS, type NumberAdjuster } from './adjuster.ts';
import { adjusterOf, ADJUSTERS, steppedAdjuster } from './all-adjusters.ts';

const numbers = ADJUSTERS.filter((adjuster) => adjuster.kind === 'number');

function numberAdjuster(key: NumberAdjuster['key']): NumberAdjuster {
  const adjuster = adjusterOf(key);
  if (adjuster.kind !== 'number') throw new Error(`${key} is no number`);
  return adjuster;
}

describe('the adjusters', () => {
  it('are exactly one for each key of a setup', () => {
    expect(ADJUSTERS.map((adjuster) => adjuster.key).sort()).toEqual(Object.keys(plainSetup).sort());
    for (const adjuster of ADJUSTERS) expect(adjusterOf(adjuster.key)).toBe(adjuster);
  });

  it('have labels of their own and the groups there are, none of them empty', () => {
    expect(new Set(ADJUSTERS.map((adjuster) => adjuster.label)).size).toBe(ADJUSTERS.length);
    expect(new Set(ADJUSTERS.map((adjuster) => adjuster.group))).toEqual(
      new Set(ADJUSTER_GROUPS.map((group) => group.key)),
    );
  });

  it('say in a sentence what they are', () => {
    for (const adjuster of ADJUSTERS) expect(adjuster.help).toMatch(/^[A-Z].*\.$/);
  });

  it.each(numbers.map((adjuster) => [adjuster.key, adjuster] as const))(
    '%s holds the plain setup, in steps above zero',
    (key, adjuster) => {
      const { least, most, step } = adjuster.range(plainBike);
      expect(step).toBeGreaterThan(0);
      expect(plainSetup[key]).toBeGreaterThanOrEqual(least);
      expect(plainSetup[key]).toBeLessThanOrEqual(most);
    },
  );
});

describe('an adjuster stepped', () => {
  it('moves by its steps without rounding noise', () => {
    const adjuster = numberAdjuster('headAngleCupsDeg');
    let value = 0;
    for (let i = 0; i < 10; i++) value = steppedAdjuster(adjuster, plainBike, value, 1);
    expect(value).toBe(2.5);
    expect(steppedAdjuster(numberAdjuster('clampOffset'), plainBike, 30.1, 2)).toBe(31.1);
  });

  it('stops at both ends of its range', () => {
    expect(steppedAdjuster(numberAdjuster('axlePosition'), plainBike, 29.5, 3)).toBe(plainBike.swingarm.slot);
    expect(steppedAdjuster(numberAdjuster('frontTravelUsed'), plainBike, 1, -5)).toBe(0);
    expect(steppedAdjuster(numberAdjuster('rearTravelUsed'), plainBike, 129, 5)).toBe(
      plainBike.swingarm.wheelTravel,
    );
  });
});

describe('an adjuster counted as the workshop counts', () => {
  it('moves the shock by half turns of its thread, and by half a millimetre without one', () => {
    const adjuster = numberAdjuster('shockLength');
    expect(adjuster.range(plainBike).step).toBe(0.75);
    expect(adjuster.aside?.(3, plainBike)).toEqual({ amount: 2, counted: 'turns' });
    const plain = withSwingarm(plainBike, { shockThread: null });
    expect(adjuster.range(plain).step).toBe(0.5);
    expect(adjuster.aside?.(3, plain)).toBeNull();
  });

  it('tells the axle’s place in links: half a pitch each', () => {
    expect(numberAdjuster('axlePosition').aside?.(15.875, plainBike)).toEqual({
      amount: 2,
      counted: 'links',
    });
  });
});
