/** Damaged sheets and files of several bikes: opened with a list of repairs or refused with a reason, never an exception. */
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { openBikes, saveBikes } from '../../src/document/bikes-file.ts';
import { openSheet } from '../../src/document/open-sheet.ts';
import { saveSheet } from '../../src/document/save-sheet.ts';
import { correctNote, newSheet } from '../../src/document/sheet.ts';
import { cases } from '../support/cases.ts';
import { newDocument } from '../support/new-document.ts';
import { plainBike, plainSetup } from '../support/plain-bike.ts';

const RUNS = cases(400);
/** How long a count may take on a slow machine, ms. */
const PATIENCE_MS = cases(60_000);

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

const odd = fc.constantFrom<unknown>(null, true, -1, 1e300, '', 'x', [], {}, '2026-02-31', '\u202e', {
  a: 1,
});

/** The places of all values in parsed JSON, as paths. */
function placesIn(value: unknown, path: readonly string[] = []): (readonly string[])[] {
  if (typeof value !== 'object' || value === null) return [path];
  return [path, ...Object.entries(value).flatMap(([key, inner]) => placesIn(inner, [...path, key]))];
}

/** The JSON with the value at a place replaced, or left out where there is nothing to replace it with. */
function replacedAt(json: unknown, [key, ...rest]: readonly string[], by: unknown): unknown {
  if (key === undefined) return by;
  if (Array.isArray(json))
    return json.map((each, i) => (String(i) === key ? replacedAt(each, rest, by) : each));
  const entries = Object.entries(json as object).map(([name, each]): [string, unknown] => [
    name,
    name === key ? replacedAt(each, rest, by) : each,
  ]);
  return Object.fromEntries(entries.filter(([, each]) => each !== undefined));
}

/** A text with some of its values made odd or left out, or with letters cut, doubled or changed. */
function damaged(text: string): fc.Arbitrary<string> {
  const json: unknown = JSON.parse(text);
  const places = placesIn(json);
  const values = fc
    .array(fc.tuple(fc.nat(places.length - 1), fc.oneof(odd, fc.constant(undefined))), {
      minLength: 1,
      maxLength: 4,
    })
    .map((changes) =>
      JSON.stringify(
        changes.reduce<unknown>((so, [at, by]) => replacedIfThere(so, places[at], by), json) ?? null,
      ),
    );
  const letters = fc
    .record({
      at: fc.nat(text.length),
      length: fc.nat(40),
      by: fc.constantFrom('', '"', '{', ']', '\\', '\u0000', '9'),
    })
    .map(({ at, length, by }) => text.slice(0, at) + by + text.slice(at + length));
  return fc.oneof({ weight: 3, arbitrary: values }, { weight: 1, arbitrary: letters });
}

/** An earlier change may have taken the place away. */
function replacedIfThere(json: unknown, path: readonly string[], by: unknown): unknown {
  let inner: unknown = json;
  for (const key of path.slice(0, -1)) {
    if (typeof inner !== 'object' || inner === null || !(key in inner)) return json;
    inner = (inner as Record<string, unknown>)[key];
  }
  if (path.length > 0 && (typeof inner !== 'object' || inner === null)) return json;
  return replacedAt(json, path, by);
}

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
        expect(openBikes(saveBikes(bikes, 1))).toEqual({ ok: true, value: { bikes, report: [] } });
      }),
      { numRuns: RUNS, endOnFailure: true },
    );
    expect(counts.partly).toBeGreaterThan(RUNS / 10);
    expect(counts.refused).toBeGreaterThan(RUNS / 20);
  },
  PATIENCE_MS,
);
