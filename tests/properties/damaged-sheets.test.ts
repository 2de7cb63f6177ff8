/** Damaged bikes, sheets and files of several bikes: opened with a list of repairs or refused with a reason, never an exception. */
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { openBikes, saveBikes } from '../../src/document/bikes-file.ts';
import { openDocument } from '../../src/document/open-document.ts';
import { openSheet } from '../../src/document/open-sheet.ts';
import { saveDocument } from '../../src/document/save-document.ts';
import { saveSheet } from '../../src/document/save-sheet.ts';
import { correctNote, newSheet } from '../../src/document/sheet.ts';
import { cases } from '../support/cases.ts';
import { damaged } from '../support/damaged.ts';
import { newDocument } from '../support/new-document.ts';
import { plainBike, plainSetup } from '../support/plain-bike.ts';

const RUNS = cases(400, 20_000);
/** How long a count may take on a slow machine, ms. */
const PATIENCE_MS = cases(60_000, 3_000_000);

const sheet = correctNote(
  newSheet({
    day: '2026-05-02',
    madeAt: 1_777_000_000_000,
    bike: plainBike,
    setup: plainSetup,
    notes: { place: 'Invented hill road', felt: 'calm' },
    further: [{ name: 'Brake pads', text: 'new' }],
    readings: { riderUp: { trail: 96.4 } },
  }),
  'felt',
  'What was felt',
  'calm, then nervous',
  1_777_000_100_000,
);
const sheetText = saveSheet(sheet);
const bikeText = saveDocument(newDocument(plainBike, plainSetup));
const bikesText = saveBikes(
  [
    {
      id: 'one',
      card: { owner: 'Ada', notes: 'Low seat', tags: ['track'], archived: false },
      document: newDocument(plainBike, plainSetup),
      sheets: [{ id: 's1', sheet }],
    },
  ],
  1_777_000_200_000,
);

it(
  'a damaged bike opens to one that saves and opens again unchanged, or is refused in words',
  () => {
    const counts = { opened: 0, refused: 0 };
    fc.assert(
      fc.property(damaged(bikeText), (text) => {
        const found = openDocument(text);
        if (!found.ok) {
          counts.refused++;
          expect(found.reason.sentence.length).toBeGreaterThan(10);
          return;
        }
        counts.opened++;
        const { document } = found.value;
        expect(openDocument(saveDocument(document))).toEqual({ ok: true, value: { document, repairs: [] } });
      }),
      { numRuns: RUNS, endOnFailure: true },
    );
    expect(counts.opened).toBeGreaterThan(RUNS / 10);
    expect(counts.refused).toBeGreaterThan(RUNS / 10);
  },
  PATIENCE_MS,
);

it(
  'a damaged sheet opens to one that saves and opens again unchanged, or is refused in words',
  () => {
    const counts = { opened: 0, refused: 0 };
    fc.assert(
      fc.property(damaged(sheetText), (text) => {
        const found = openSheet(text);
        if (!found.ok) {
          counts.refused++;
          expect(found.reason.sentence.length).toBeGreaterThan(10);
          return;
        }
        counts.opened++;
        const again = openSheet(saveSheet(found.value.sheet));
        expect(again).toEqual({ ok: true, value: { sheet: found.value.sheet, repairs: [] } });
      }),
      { numRuns: RUNS, endOnFailure: true },
    );
    expect(counts.opened).toBeGreaterThan(RUNS / 10);
    expect(counts.refused).toBeGreaterThan(RUNS / 10);
  },
  PATIENCE_MS,
);

it(
  'a damaged file of several bikes opens what can be used and names the rest, or is refused in words',
  () => {
    const counts = { whole: 0, partly: 0, refused: 0 };
    fc.assert(
      fc.property(damaged(bikesText), (text) => {
        const found = openBikes(text);
        if (!found.ok) {
          counts.refused++;
          expect(found.reason.sentence.length).toBeGreaterThan(10);
          return;
        }
        const { bikes, report } = found.value;
        counts[report.length === 0 ? 'whole' : 'partly']++;
        expect(openBikes(saveBikes(bikes, 1))).toEqual({
          ok: true,
          value: { bikes, lessons: [], report: [] },
        });
      }),
      { numRuns: RUNS, endOnFailure: true },
    );
    expect(counts.partly).toBeGreaterThan(RUNS / 10);
    expect(counts.refused).toBeGreaterThan(RUNS / 20);
  },
  PATIENCE_MS,
);
