/** A circle is written as roads are measured. */
import { expect, it } from 'vitest';
import { writeNumber } from './number-style.ts';

it('in metres or feet, with the user’s decimal sign', () => {
  expect(writeNumber(32413.9, 'circle', { system: 'metric', decimal: '.' }).text).toBe('32.41\u00a0m');
  expect(writeNumber(30480, 'circle', { system: 'inch', decimal: ',' }).text).toBe('100,0\u00a0ft');
});
