/** Tests of the corner's words: a circle as roads are measured. */
import { expect, it } from 'vitest';
import { circleWords } from './corner-words.ts';

it('a circle is written in metres or feet, with the user’s decimal sign', () => {
  expect(circleWords(32413.9, { system: 'metric', decimal: '.' })).toBe('32.41\u00a0m');
  expect(circleWords(30480, { system: 'inch', decimal: ',' })).toBe('100,0\u00a0ft');
});
