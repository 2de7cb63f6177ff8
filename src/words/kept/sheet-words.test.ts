/** Tests of what a sheet is called, and what it says in a line. */
import { expect, it } from 'vitest';
import { seasonLine, sheetLine } from './sheet-words.ts';

const RIDER = [
  { key: 'braking', label: 'Braking' },
  { key: 'exit', label: 'Exit' },
];

it('beside a figure of a season stand place, conditions and every word of the rider', () => {
  const notes = {
    place: 'Invented hill road',
    weather: 'cold',
    track: 'damp',
    changed: 'fork 5 → 8 mm',
    felt: 'calm',
    braking: 'dives',
    exit: 'runs\nwide',
  };
  expect(seasonLine({ day: '2026-04-03', notes }, RIDER)).toBe(
    '3 Apr 2026, Invented hill road, cold, damp: fork 5 → 8 mm. calm. Braking: dives. Exit: runs wide',
  );
  expect(seasonLine({ day: '2026-04-03', notes: {} }, RIDER)).toBe('3 Apr 2026');
});

it('a line of the list is cut where it grows long', () => {
  expect(sheetLine({ day: '2026-04-03', notes: { changed: 'a'.repeat(200) } })).toHaveLength(91);
});
