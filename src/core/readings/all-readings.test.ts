/** Tests of the list of readings: each is there once and has all its words. */
import { describe, expect, it } from 'vitest';
import { ridden } from '../../../tests/support/ridden-bike.ts';
import { QUANTITIES } from '../units/all-quantities.ts';
import { READING_GROUPS, READINGS } from './all-readings.ts';
import { throttleClosedRise } from './throttle-closed-rise.ts';

describe('the readings', () => {
  it('differ in key and label', () => {
    expect(new Set(READINGS.map((r) => r.key)).size).toBe(READINGS.length);
    expect(new Set(READINGS.map((r) => r.label)).size).toBe(READINGS.length);
  });

  it('belong to the groups there are, and no group is empty', () => {
    expect(new Set(READINGS.map((r) => r.group))).toEqual(new Set(READING_GROUPS.map((g) => g.key)));
  });

  it.each(READINGS.map((r) => [r.key, r] as const))(
    '%s says what it is, its sign, how to measure it and what it feels like',
    (_, reading) => {
      for (const words of Object.values(reading.help)) expect(words).toMatch(/^[A-Z0-9].{8,}\.$/);
      expect(reading.more).not.toBe(reading.less);
      expect(QUANTITIES[reading.quantity]).toBeDefined();
    },
  );

  it('all have a finite number on a bike with all its parts', () => {
    const on = ridden('riderUp');
    const closed = ridden('throttleClosed');
    for (const reading of READINGS) {
      const at = reading === throttleClosedRise ? closed : on;
      expect(Number.isFinite(reading.read(at)), reading.key).toBe(true);
      if (at === closed) expect(reading.read(on)).toMatchObject({ reason: 'throttleOpen' });
    }
  });
});
