/** The widths of words against those of a wide font, measured once in a browser. */
import { expect, it } from 'vitest';
import { textWidthPx } from './text-width.ts';

/** Widths at 100 px in DejaVu Sans, the names of areas in its bold. */
const MEASURED = [
  { text: 'Wheelbase 1482.0 mm', widthPx: 1159.8 },
  { text: 'Trail 98.8 mm', widthPx: 685.4 },
  { text: 'Rake 24.05°', widthPx: 612.5 },
  { text: 'Squat line, anti-squat 119.7 %', widthPx: 1518.7 },
  { text: 'Load-transfer line', widthPx: 883.2 },
  { text: 'Centre of gravity', widthPx: 845.6 },
  { text: 'Swingarm 12.77°', widthPx: 866 },
  { text: '1482.0 mm (along 1480.0 mm, up 22.5 mm, slope −0.9°)', widthPx: 2897.5 },
  { text: '58 3/8 in', widthPx: 442.9 },
  { text: 'PRO-SQUAT', widthPx: 651.7 },
  { text: 'NEUTRAL', widthPx: 519.5 },
  { text: 'SQUAT', widthPx: 373 },
  { text: 'LIFT', widthPx: 237.5 },
];

it.each(MEASURED)('"$text" fits, with no more than a quarter to spare', ({ text, widthPx }) => {
  expect(textWidthPx(text, 100)).toBeGreaterThanOrEqual(widthPx);
  expect(textWidthPx(text, 100)).toBeLessThan(1.25 * widthPx);
});

it('width goes with the size of the letters', () => {
  expect(textWidthPx('Trail 98.8 mm', 26)).toBeCloseTo(2 * textWidthPx('Trail 98.8 mm', 13), 9);
});
