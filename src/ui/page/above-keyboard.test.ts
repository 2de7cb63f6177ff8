/** Tests of how far a field goes up for the keyboard. */
import { expect, it } from 'vitest';
import { liftFor } from './above-keyboard.ts';

it.each([
  ['seen whole stays', { top: 100, bottom: 150 }, { top: 0, bottom: 400 }, 0],
  [
    'under the keyboard comes up until there is room below it',
    { top: 600, bottom: 650 },
    { top: 0, bottom: 400 },
    262,
  ],
  [
    'taller than what is seen goes to the top and no further',
    { top: 300, bottom: 900 },
    { top: 0, bottom: 400 },
    288,
  ],
  ['above what is seen is left to the browser', { top: -50, bottom: -10 }, { top: 0, bottom: 400 }, 0],
] as const)('a field %s', (_, field, seen, lift) => {
  expect(liftFor(field, seen)).toBe(lift);
});
