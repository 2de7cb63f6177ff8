/** Damaged lessons, sheets of measurements, pictures and links: opened with a list of repairs or refused with a reason, never an exception. */
import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { readMeasureFile } from '../../src/commands/read-measure-file.ts';
import { pictureFacts } from '../../src/core/measure/photo/picture-facts.ts';
import { DEMO_BIKES } from '../../src/document/demos/demo-bikes.ts';
import { LESSONS } from '../../src/lessons/all-lessons.ts';
import { openLesson } from '../../src/lessons/open-lesson.ts';
import { saveLesson } from '../../src/lessons/save-lesson.ts';
import { makeLink, openLink } from '../../src/storage/link/bike-link.ts';
import { cases } from '../support/cases.ts';
import { damaged } from '../support/damaged.ts';
import { flatJpeg } from '../support/flat-jpeg.ts';

const RUNS = cases(150, 10_000);
/** How long a count may take on a slow machine, ms. */
const PATIENCE_MS = cases(60_000, 3_000_000);

const [demo] = DEMO_BIKES;
const file = (name: string): URL => new URL(`../../fixtures/${name}`, import.meta.url);

it(
  'a damaged lesson opens to one that saves and opens again unchanged, or is refused in words',
  () => {
    const counts = { opened: 0, refused: 0 };
    const { bike, setup } = demo;
    const text = saveLesson({ lesson: { ...LESSONS[2], key: 'filed' }, asSet: { bike, setup } });
    fc.assert(
      fc.property(damaged(text), (each) => {
        const found = openLesson(each);
        counts[found.ok ? 'opened' : 'refused']++;
        if (!found.ok) {
          expect(found.reason.sentence.length).toBeGreaterThan(10);
          return;
        }
        const { filed } = found.value;
        expect(openLesson(saveLesson(filed))).toMatchObject({ ok: true, value: { filed } });
      }),
      { numRuns: RUNS },
    );
    expect(counts.opened).toBeGreaterThan(RUNS / 10);
    expect(counts.refused).toBeGreaterThan(RUNS / 10);
  },
  PATIENCE_MS,
);

it(
  'a damaged sheet of measurements is read or refused in words',
  () => {
    const counts = { read: 0, refused: 0 };
    const text = readFileSync(file('measure/whole-bike.json'), 'utf8');
    fc.assert(
      fc.property(damaged(text), (each) => {
        const found = readMeasureFile(each);
        counts[found.ok ? 'read' : 'refused']++;
        if (!found.ok) expect(found.reason.length).toBeGreaterThan(10);
        else
          expect(
            found.value.sheet.rows.filter(({ figure }) => /^(undefined|null|NaN)$/.test(figure)),
          ).toEqual([]);
      }),
      { numRuns: RUNS },
    );
    expect(counts.refused).toBeGreaterThan(RUNS / 10);
  },
  PATIENCE_MS,
);

it(
  'a damaged picture says its size in whole numbers, or nothing',
  () => {
    const pictures = [
      readFileSync(file('photos/square.png')).subarray(0, 4000),
      Buffer.from(flatJpeg({ across: 5, down: 3, level: (column) => 40 * column, orientation: 6 })),
    ];
    const harm = fc.array(fc.tuple(fc.nat(), fc.nat(255)), { minLength: 1, maxLength: 12 });
    fc.assert(
      fc.property(fc.constantFrom(...pictures), harm, fc.nat(), (picture, changes, cut) => {
        const bytes = Uint8Array.from(picture.subarray(0, picture.length - (cut % 3 === 0 ? cut % 900 : 0)));
        // Most of what is read stands in the first bytes.
        for (const [at, by] of changes) bytes[at % Math.min(bytes.length, 200)] = by;
        const { size } = pictureFacts(bytes);
        if (size !== null)
          expect([size.widthPx, size.heightPx].every((px) => Number.isInteger(px) && px >= 0)).toBe(true);
      }),
      { numRuns: RUNS },
    );
  },
  PATIENCE_MS,
);

it(
  'a damaged link is refused in words, unless the damage is none',
  async () => {
    const made = await makeLink(demo, 'https://example.test/');
    if (!made.ok) throw new Error('no link');
    const whole = made.value.slice(made.value.indexOf('#'));
    const change = fc.tuple(
      fc.integer({ min: 6, max: whole.length - 1 }),
      fc.constantFrom('', 'A', '%', '..', '\u0000'),
    );
    await fc.assert(
      fc.asyncProperty(fc.array(change, { minLength: 1, maxLength: 5 }), async (changes) => {
        const text = changes.reduce((so, [at, by]) => so.slice(0, at) + by + so.slice(at + 1), whole);
        const found = await openLink(text);
        if (text !== whole) expect(found.ok).toBe(false);
        if (!found.ok) expect(found.reason.length).toBeGreaterThan(10);
      }),
      { numRuns: RUNS },
    );
  },
  PATIENCE_MS,
);
