/** Tests of the dials: one for each thing a setup says, with sensible steps. */
import { describe, expect, it } from 'vitest';
import { plainBike, plainSetup, withSwingarm } from '../../../tests/support/plain-bike.ts';
import { DIAL_GROUPS, type NumberDial } from './dial.ts';
import { dialOf, DIALS, steppedDial } from './dials.ts';

const numbers = DIALS.filter((dial) => dial.kind === 'number');

function numberDial(key: NumberDial['key']): NumberDial {
  const dial = dialOf(key);
  if (dial.kind !== 'number') throw new Error(`${key} is no number`);
  return dial;
}

describe('the dials', () => {
  it('are exactly one for each key of a setup', () => {
    expect(DIALS.map((dial) => dial.key).sort()).toEqual(Object.keys(plainSetup).sort());
    for (const dial of DIALS) expect(dialOf(dial.key)).toBe(dial);
  });

  it('have labels of their own and the groups there are, none of them empty', () => {
    expect(new Set(DIALS.map((dial) => dial.label)).size).toBe(DIALS.length);
    expect(new Set(DIALS.map((dial) => dial.group))).toEqual(new Set(DIAL_GROUPS.map((group) => group.key)));
  });

  it('say in a sentence what they are', () => {
    for (const dial of DIALS) expect(dial.help).toMatch(/^[A-Z].*\.$/);
  });

  it.each(numbers.map((dial) => [dial.key, dial] as const))(
    '%s holds the plain setup, in steps above zero',
    (key, dial) => {
      const { least, most, step } = dial.range(plainBike);
      expect(step).toBeGreaterThan(0);
      expect(plainSetup[key]).toBeGreaterThanOrEqual(least);
      expect(plainSetup[key]).toBeLessThanOrEqual(most);
    },
  );
});

describe('a dial stepped', () => {
  it('moves by its steps without rounding noise', () => {
    const dial = numberDial('headInsertDeg');
    let value = 0;
    for (let i = 0; i < 10; i++) value = steppedDial(dial, plainBike, value, 1);
    expect(value).toBe(2.5);
    expect(steppedDial(numberDial('clampOffset'), plainBike, 30.1, 2)).toBe(31.1);
  });

  it('stops at both ends of its range', () => {
    expect(steppedDial(numberDial('axlePosition'), plainBike, 29.5, 3)).toBe(plainBike.swingarm.slot);
    expect(steppedDial(numberDial('frontTravelUsed'), plainBike, 1, -5)).toBe(0);
    expect(steppedDial(numberDial('rearTravelUsed'), plainBike, 129, 5)).toBe(plainBike.swingarm.wheelTravel);
  });
});

describe('a dial counted as the workshop counts', () => {
  it('moves the shock by half turns of its thread, and by half a millimetre without one', () => {
    const dial = numberDial('shockLength');
    expect(dial.range(plainBike).step).toBe(0.75);
    expect(dial.aside?.(3, plainBike)).toEqual({ amount: 2, counted: 'turns' });
    const plain = withSwingarm(plainBike, { shockThread: null });
    expect(dial.range(plain).step).toBe(0.5);
    expect(dial.aside?.(3, plain)).toBeNull();
  });

  it('tells the axle’s place in links: half a pitch each', () => {
    expect(numberDial('axlePosition').aside?.(15.875, plainBike)).toEqual({ amount: 2, counted: 'links' });
  });
});
