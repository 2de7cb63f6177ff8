/** Tests of the line under a saved picture. */
import { expect, it } from 'vitest';
import { pictureLine } from './picture-words.ts';

const about = {
  bikeName: 'Blue one',
  what: 'Side view, rider on board',
  day: '2026-11-27',
  system: 'metric',
  invented: false,
} as const;

it('names the bike, what is shown, the day and the units', () => {
  expect(pictureLine(about)).toBe(
    'Blue one. Side view, rider on board. 27 Nov 2026. Lengths in mm, angles in degrees.',
  );
  expect(pictureLine({ ...about, system: 'inch', invented: true })).toBe(
    'Blue one. Side view, rider on board. 27 Nov 2026. Lengths in inches, angles in degrees. Invented figures.',
  );
});
