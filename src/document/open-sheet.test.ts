/** Tests of setup sheets: saved and opened as they were, repaired with a list, refused with a reason, corrected openly. */
import { describe, expect, it } from 'vitest';
import { plainBike, plainSetup } from '../../tests/support/plain-bike.ts';
import { isDay, openSheet } from './open-sheet.ts';
import { saveSheet, sheetJson } from './save-sheet.ts';
import { correctDay, correctNote, newSheet, type Sheet } from './sheet.ts';

const sheet: Sheet = newSheet({
  day: '2026-05-02',
  madeAt: 1_777_000_000_000,
  bike: plainBike,
  setup: { ...plainSetup, shockLength: 4 },
  notes: { place: 'Invented hill road', changed: 'Shock 4 mm longer', felt: '  ' },
  further: [
    { name: 'Gearbox oil', text: 'fresh' },
    { name: ' ', text: '' },
  ],
  readings: { riderUp: { trail: 96.4, rake: 24.1 } },
});

function opened(text: string) {
  const found = openSheet(text);
  if (!found.ok) throw new Error(found.reason.sentence);
  return found.value;
}

const changed = (more: object): string => JSON.stringify({ ...sheetJson(sheet), ...more });

function reason(text: string): string {
  const found = openSheet(text);
  return found.ok ? 'opened' : found.reason.sentence;
}

describe('a setup sheet', () => {
  it('leaves out notes without words, and is the same after a save', () => {
    expect(Object.keys(sheet.notes)).toEqual(['place', 'changed']);
    expect(sheet.further).toEqual([{ name: 'Gearbox oil', text: 'fresh' }]);
    expect(opened(saveSheet(sheet))).toEqual({ sheet, repairs: [] });
  });

  it('of another format, without a day, of a newer schema or without its bike is refused with the reason', () => {
    expect(reason('{}')).toBe('This is not a setup sheet: it does not say "format": "sidestance-sheet".');
    expect(reason(changed({ day: '2026-02-30' }))).toContain('must be a day such as 2026-11-26');
    expect(reason(changed({ schema: 2 }))).toContain('saved by a newer Sidestance (schema 2)');
    expect(reason(changed({ schema: 'x' }))).toContain('"schema" is "x" but must be a whole number from 1');
    expect(reason(changed({ asSet: null }))).toMatch(/^The sheet’s bike cannot be used\. The file is not/);
    expect(reason('')).toBe('The file is empty.');
  });

  it('repairs what is wrong beside its bike and day, and says each', () => {
    const { sheet: mended, repairs } = opened(
      changed({
        madeAt: 'noon',
        notes: { place: 7, felt: 'good', gearbox: 'x' },
        further: [{ name: 'a', text: 'b' }, 3],
        readings: { riderUp: { trail: 'long', rake: 24 }, braking: 1 },
        corrections: 'none',
        extra: true,
      }),
    );
    expect(mended).toMatchObject({
      madeAt: 0,
      notes: { felt: 'good' },
      further: [{ name: 'a', text: 'b' }],
      readings: { riderUp: { rake: 24 }, braking: {} },
      corrections: [],
    });
    expect(repairs.map(({ path }) => path)).toEqual([
      'extra',
      'madeAt',
      'notes.gearbox',
      'notes.place',
      'further',
      'readings',
      'corrections',
    ]);
  });

  it('keeps how sure its readings were, and leaves out what is no standard deviation', () => {
    const measured = { ...sheet, u: { riderUp: { trail: 2.5 } } };
    expect(opened(saveSheet(measured))).toEqual({ sheet: measured, repairs: [] });
    const { sheet: mended, repairs } = opened(changed({ u: { riderUp: { trail: -1, rake: 0.2 } } }));
    expect(mended.u).toEqual({ riderUp: { rake: 0.2 } });
    expect(repairs.map(({ path }) => path)).toEqual(['u']);
  });

  it('keeps both values of a correction, and keeps no correction when nothing changed', () => {
    const once = correctNote(sheet, 'place', 'Place', 'Invented valley road', 5);
    expect(once.notes.place).toBe('Invented valley road');
    expect(once.corrections).toEqual([
      { at: 5, what: 'Place', from: 'Invented hill road', to: 'Invented valley road' },
    ]);
    const twice = correctDay(correctNote(once, 'felt', 'What was felt', 'calm', 6), '2026-05-03', 7);
    expect(twice.corrections.slice(1)).toEqual([
      { at: 6, what: 'What was felt', from: '', to: 'calm' },
      { at: 7, what: 'Day', from: '2026-05-02', to: '2026-05-03' },
    ]);
    expect(correctNote(sheet, 'place', 'Place', 'Invented hill road', 5)).toBe(sheet);
    expect(correctDay(sheet, '2026-05-02', 5)).toBe(sheet);
    expect(opened(saveSheet(twice)).sheet).toEqual(twice);
  });

  it('knows days of the calendar', () => {
    expect(['2026-11-26', '2024-02-29'].every(isDay)).toBe(true);
    expect(['2026-2-3', '2025-02-29', '26-11-2026', '', 'today'].some(isDay)).toBe(false);
  });
});
