/** Damaged stores: every bike and sheet in them opens with a list of repairs or is refused in words, and reading changes nothing. */
import 'fake-indexeddb/auto';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { openDocument } from '../../src/document/open-document.ts';
import { openSheet } from '../../src/document/open-sheet.ts';
import { saveDocument } from '../../src/document/save-document.ts';
import { saveSheet } from '../../src/document/save-sheet.ts';
import { newSheet } from '../../src/document/sheet.ts';
import { EMPTY_CARD } from '../../src/storage/bike-index.ts';
import type { Stored } from '../../src/storage/bike-store.ts';
import { browserStore } from '../../src/storage/browser-store.ts';
import { restoreBikes } from '../../src/storage/restore-bikes.ts';
import { openBikes, saveBikes } from '../../src/document/bikes-file.ts';
import { cases } from '../support/cases.ts';
import { damaged, odd } from '../support/damaged.ts';
import { newDocument } from '../support/new-document.ts';
import { plainBike, plainSetup } from '../support/plain-bike.ts';
import { dumped, EMPTY, filledWith, SHELVES, type Dump, type Shelf } from '../support/stored-dump.ts';

const RUNS = cases(120);
const PATIENCE_MS = cases(60_000);

const document = newDocument(plainBike, plainSetup);
const sheet = newSheet({
  day: '2026-05-02',
  madeAt: 5,
  bike: plainBike,
  setup: plainSetup,
  notes: { place: 'Invented hill road' },
  further: [],
  readings: {},
});
const IDS = ['one', 'two'];
/** What no damage touches, or the record could not even be stored. */
const KEYS = ['id', 'writer', 'keptAt', 'bikeId'];

/** One damage: which record of which shelf, which of its fields, and by what; a text is damaged within. */
interface Damage {
  readonly shelf: Shelf;
  readonly record: number;
  readonly field: number;
  readonly by: unknown;
  readonly text: string;
  readonly sheetText: string;
}

const damage: fc.Arbitrary<Damage> = fc.record({
  shelf: fc.constantFrom<Shelf>('bikes', 'bikes', 'index', 'sheets', 'sheets', 'revisions'),
  record: fc.nat(1),
  field: fc.nat(9),
  by: fc.oneof({ weight: 1, arbitrary: fc.constant('damaged text') }, { weight: 1, arbitrary: odd }),
  text: damaged(saveDocument(document)),
  sheetText: damaged(saveSheet(sheet)),
});

function damagedBy(dump: Dump, { shelf, record, field, by, text, sheetText }: Damage): Dump {
  const records = dump[shelf].map((each, i) => {
    if (i !== record) return each;
    const fields = Object.keys(each as object).filter((key) => !KEYS.includes(key));
    const name = fields.includes('text') && by === 'damaged text' ? 'text' : fields[field % fields.length];
    const within = shelf === 'sheets' ? sheetText : text;
    return { ...(each as object), [name]: by === 'damaged text' ? within : by };
  });
  return { ...dump, [shelf]: records };
}

async function whole(): Promise<Dump> {
  await filledWith(EMPTY);
  const store = browserStore();
  for (const id of IDS) {
    const bike = { id, name: id, revision: 1, writer: 'a', savedAt: 1, text: saveDocument(document) };
    const own = [{ id: `${id}-s`, bikeId: id, day: sheet.day, madeAt: 5, text: saveSheet(sheet) }];
    const revisions = [{ ...bike, writer: 'b' }];
    await store.putBack({ bike, card: EMPTY_CARD, sheets: own, revisions, originals: [], pictures: [] });
  }
  store.close();
  return await dumped();
}

async function value<T>(stored: Stored<T>): Promise<T> {
  const result = await stored;
  if (!result.ok) throw new Error(result.reason.sentence);
  return result.value;
}

it(
  'a damaged store lists every bike or reports it, each text opens or is refused, and reading leaves it as it is',
  async () => {
    const before = await whole();
    const counts = { read: 0, repaired: 0, refused: 0, reported: 0 };
    const note = (found: ReturnType<typeof openDocument> | ReturnType<typeof openSheet>): void => {
      if (!found.ok) expect(found.reason.sentence.length).toBeGreaterThan(10);
      counts[!found.ok ? 'refused' : found.value.repairs.length > 0 ? 'repaired' : 'read']++;
    };
    await fc.assert(
      fc.asyncProperty(fc.array(damage, { minLength: 1, maxLength: 4 }), async (damages) => {
        await filledWith(damages.reduce(damagedBy, before));
        const found = await dumped();
        const store = browserStore();
        const { bikes, unreadable } = await value(store.list());
        counts.reported += unreadable.length;
        for (const { sentence } of unreadable) expect(sentence).toMatch(/is not a bike/);
        for (const { id } of bikes) {
          const bike = await value(store.load(id));
          if (bike !== null) note(openDocument(bike.text));
          for (const { text } of await value(store.sheets(id))) note(openSheet(text));
          for (const { text } of await value(store.revisions(id))) note(openDocument(text));
          await value(store.whole(id));
        }
        store.close();
        expect(await dumped()).toEqual(found);
      }),
      { numRuns: RUNS },
    );
    for (const count of Object.values(counts)) expect(count).toBeGreaterThan(0);
  },
  PATIENCE_MS,
);

it(
  'a damaged file of several bikes that is refused leaves the store as it was, and one that opens takes nothing away',
  async () => {
    const before = await whole();
    const card = { owner: 'Eve', notes: '', tags: [], archived: false };
    const bikes = [
      { id: 'one', card, document, sheets: [{ id: 'one-s', sheet: { ...sheet, day: '2026-06-01' } }] },
    ];
    const counts = { opened: 0, refused: 0 };
    await filledWith(before);
    const store = browserStore();
    let ids = 0;
    await fc.assert(
      fc.asyncProperty(damaged(saveBikes(bikes, 7)), async (text) => {
        const found = await dumped();
        const opened = openBikes(text);
        counts[opened.ok ? 'opened' : 'refused']++;
        if (opened.ok)
          await value(
            restoreBikes(
              store,
              {
                bikes: opened.value.bikes,
                pictures: [],
                lessons: opened.value.lessons.map(({ lesson, ...rest }) => ({
                  ...rest,
                  text: JSON.stringify(lesson),
                })),
              },
              { now: 9, newId: () => `new-${++ids}` },
            ),
          );
        const then = await dumped();
        if (!opened.ok) expect(then).toEqual(found);
        for (const shelf of SHELVES.filter((each) => each !== 'index'))
          expect(then[shelf]).toEqual(expect.arrayContaining([...found[shelf]]));
        if (then.sheets.length > 40) await filledWith(before);
      }),
      { numRuns: RUNS },
    );
    store.close();
    expect(counts.opened).toBeGreaterThan(RUNS / 10);
    expect(counts.refused).toBeGreaterThan(RUNS / 20);
  },
  PATIENCE_MS,
);
