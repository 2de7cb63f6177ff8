/** Tests of bringing a file of several bikes back: saved, opened with a report, merged without losing either side. */
import { describe, expect, it } from 'vitest';
import { newDocument } from '../../tests/support/new-document.ts';
import { plainBike, plainSetup } from '../../tests/support/plain-bike.ts';
import { openBikes, saveBikes, type FiledBike, type FiledLessonJson } from '../document/bikes-file.ts';
import { saveDocument } from '../document/save-document.ts';
import { saveSheet } from '../document/save-sheet.ts';
import { newSheet } from '../document/sheet.ts';
import type { BikeStore, KeptPicture, Stored, StoredLesson } from './bike-store.ts';
import { memoryStore } from './memory-store.ts';
import { pictureFrom, pictureText } from './file/picture-text.ts';
import { restoreBikes } from './restore-bikes.ts';

const sheet = (place: string) =>
  newSheet({
    day: '2026-05-02',
    madeAt: 5,
    bike: plainBike,
    setup: plainSetup,
    notes: { place },
    further: [],
    readings: {},
  });

const filed = (more: Partial<FiledBike> = {}): FiledBike => ({
  id: 'one',
  card: { owner: 'Ada', notes: '', tags: ['track'], archived: false },
  document: newDocument(plainBike, plainSetup),
  sheets: [{ id: 's1', sheet: sheet('Invented hill road') }],
  ...more,
});

let ids = 0;
const options = { now: 100, newId: () => `new-${++ids}` };

async function value<T>(stored: Stored<T>): Promise<T> {
  const result = await stored;
  if (!result.ok) throw new Error(result.reason.sentence);
  return result.value;
}

async function restored(
  store: BikeStore,
  bikes: readonly FiledBike[],
  lessons: readonly StoredLesson[] = [],
  pictures: readonly Omit<KeptPicture, 'id'>[] = [],
) {
  return await value(restoreBikes(store, { bikes, lessons, pictures }, options));
}

function opened(text: string) {
  const found = openBikes(text);
  if (!found.ok) throw new Error(found.reason.sentence);
  return found.value;
}

describe('a file of several bikes', () => {
  it('opens as it was saved', () => {
    const bikes = [filed(), filed({ id: 'two', sheets: [] })];
    expect(opened(saveBikes(bikes, 7))).toEqual({ bikes, lessons: [], report: [] });
  });

  it('opens without the bikes and sheets that cannot be used, and names each', () => {
    const json = JSON.parse(saveBikes([filed(), filed({ id: 'two' })], 7)) as {
      bikes: { id: unknown; bike: unknown; sheets: { id: unknown; sheet: unknown }[] }[];
    };
    json.bikes[0].sheets.push({ id: 's2', sheet: { format: 'other' } });
    json.bikes[1].bike = null;
    json.bikes.push({ id: 4, bike: null, sheets: [] });
    const { bikes, report } = opened(JSON.stringify(json));
    expect(bikes).toEqual([filed()]);
    expect(report).toEqual([
      `Sheet 2 of ${plainBike.name} was left out. This is not a setup sheet: it does not say "format": "sidestance-sheet".`,
      expect.stringMatching(/^Bike 2 of the file was left out\. The file is not a Sidestance bike/),
      'Bike 3 of the file was left out: its id is 4.',
    ]);
  });

  it('holds lessons as they are, opens without the entries that hold no lesson, and is the same as before without any', () => {
    const lessons: FiledLessonJson[] = [
      { id: 'l1', madeAt: 3, lesson: { format: 'x', title: 'Ours' } },
      { id: 'l2', madeAt: 4, lesson: {} },
    ];
    const text = saveBikes([filed()], 7, lessons);
    expect(opened(text)).toEqual({ bikes: [filed()], lessons, report: [] });
    expect(saveBikes([filed()], 7)).not.toContain('lessons');
    const json = JSON.parse(text) as { lessons: unknown };
    const odd = [
      { id: 7, lesson: {} },
      { id: 'l3', madeAt: 'x', lesson: {} },
      { id: 'l4', lesson: [] },
      null,
    ];
    expect(opened(JSON.stringify({ ...json, lessons: odd }))).toEqual({
      bikes: [filed()],
      lessons: [{ id: 'l3', madeAt: 0, lesson: {} }],
      report: [1, 3, 4].map(
        (each) => `Lesson ${each} of the file was left out: it has no id, or nothing under “lesson”.`,
      ),
    });
    expect(opened(JSON.stringify({ ...json, lessons: 7 })).report).toEqual([
      'The file’s lessons are 7, not a list; left out.',
    ]);
  });

  it('holds the pictures of its bikes, and opens without those that are damaged, and names each', async () => {
    const blob = new Blob([Uint8Array.from({ length: 70_000 }, (_, i) => i % 251)], { type: 'image/png' });
    const data = (await pictureText(blob)) ?? '';
    const pictures = [{ keptAt: 4, type: 'image/png', data }];
    const text = saveBikes([filed({ pictures })], 7);
    expect(opened(text)).toEqual({ bikes: [filed({ pictures })], lessons: [], report: [] });
    const back = pictureFrom(data, 'image/png');
    expect([back.type, await back.text()]).toEqual([blob.type, await blob.text()]);
    const json = JSON.parse(text) as { bikes: { pictures: unknown }[] };
    const odd = [
      { type: 'image/png', data: data.slice(0, -3) },
      { type: 'text/html', data },
      { type: 'image/png', data: 'no base 64' },
      { type: 'image/png', data: '' },
      null,
    ];
    json.bikes[0].pictures = odd;
    expect(opened(JSON.stringify(json))).toEqual({
      bikes: [filed()],
      lessons: [],
      report: odd.map((_, i) => `Picture ${i + 1} of ${plainBike.name} was left out: it is damaged.`),
    });
    json.bikes[0].pictures = 7;
    expect(opened(JSON.stringify(json)).report).toEqual([
      `The pictures of ${plainBike.name} are 7, not a list; left out.`,
    ]);
  });

  it('of a newer schema, of another format or cut off is refused', () => {
    const reason = (text: string): string => {
      const found = openBikes(text);
      return found.ok ? 'opened' : found.reason.sentence;
    };
    expect(reason('{"format":"sidestance-bikes","schema":2,"bikes":[]}')).toContain('newer Sidestance');
    expect(reason('{"format":"sidestance-bike"}')).toContain('does not hold several bikes');
    expect(reason('{"format":"sidestance-bikes","schema":1,"bikes":7}')).toContain('are 7, not a list');
    expect(reason(saveBikes([filed()], 7).slice(0, 900))).not.toBe('opened');
  });
});

describe('bringing one back', () => {
  it('takes no sheet from another bike, though a file gives both the same id', async () => {
    const store = memoryStore(null);
    await restored(store, [filed()]);
    const copied = filed({ id: 'two', sheets: [{ id: 's1', sheet: sheet('Invented valley road') }] });
    expect(await restored(store, [copied])).toMatchObject({ bikesAdded: 1, sheetsBeside: 1 });
    expect(await value(store.sheets('one'))).toHaveLength(1);
    expect(await value(store.sheets('two'))).toHaveLength(1);
  });

  it('keeps both states of a bike that the file holds twice', async () => {
    const store = memoryStore(null);
    const other = newDocument(plainBike, { ...plainSetup, shockLength: 5 });
    expect(await restored(store, [filed(), filed({ document: other })])).toMatchObject({
      bikesAdded: 1,
      versionsKept: 1,
      sheetsAdded: 1,
    });
    expect(await value(store.revisions('one'))).toHaveLength(1);
  });

  it('into an empty store makes every bike with its card and sheets, and twice makes nothing twice', async () => {
    const store = memoryStore(null);
    const bikes = [filed(), filed({ id: 'two', sheets: [] })];
    expect(await restored(store, bikes)).toEqual({
      bikesAdded: 2,
      versionsKept: 0,
      sheetsAdded: 1,
      sheetsBeside: 0,
      bikesSame: 0,
      lessonsAdded: 0,
      lessonsBeside: 0,
      picturesAdded: 0,
    });
    const { bikes: listed } = await value(store.list());
    expect(listed.find(({ id }) => id === 'one')).toMatchObject({ sheets: 1, card: { owner: 'Ada' } });
    expect(await restored(store, bikes)).toEqual({
      bikesAdded: 0,
      versionsKept: 0,
      sheetsAdded: 0,
      sheetsBeside: 0,
      bikesSame: 2,
      lessonsAdded: 0,
      lessonsBeside: 0,
      picturesAdded: 0,
    });
  });

  it('adds its lessons once, and keeps one that says otherwise beside the one that is here', async () => {
    const store = memoryStore(null);
    const lesson = (id: string, text: string, madeAt = 1): StoredLesson => ({ id, madeAt, text });
    const given = [lesson('l2', 'two', 2), lesson('l1', 'one')];
    expect(await restored(store, [], given)).toMatchObject({ lessonsAdded: 2, lessonsBeside: 0 });
    expect((await value(store.lessons())).map(({ text }) => text)).toEqual(['one', 'two']);
    expect(await restored(store, [], given)).toMatchObject({ lessonsAdded: 0, lessonsBeside: 0 });
    await value(store.saveLesson(lesson('l1', 'one, edited here')));
    expect(await restored(store, [], given)).toMatchObject({ lessonsAdded: 0, lessonsBeside: 1 });
    expect((await value(store.lessons())).map(({ text }) => text).sort()).toEqual([
      'one',
      'one, edited here',
      'two',
    ]);
  });

  it('adds each picture once, to its own bike', async () => {
    const store = memoryStore(null);
    const pictures = ['a', 'bc'].map((bytes) => ({ bikeId: 'one', keptAt: 4, blob: new Blob([bytes]) }));
    expect(await restored(store, [filed()], [], pictures)).toMatchObject({ picturesAdded: 2 });
    expect(await restored(store, [filed()], [], pictures)).toMatchObject({ picturesAdded: 0 });
    expect((await value(store.pictures('one'))).map(({ blob }) => blob.size)).toEqual([1, 2]);
  });

  it('loses neither side where both have changed', async () => {
    const store = memoryStore(null);
    await restored(store, [filed()]);
    const here = saveDocument(newDocument(plainBike, { ...plainSetup, shockLength: 5 }));
    await value(store.save({ id: 'one', name: 'Here', writer: 'here', savedAt: 200, text: here, known: 1 }));
    const [own] = await value(store.sheets('one'));
    await value(store.saveSheet({ ...own, text: saveSheet(sheet('Put right here')) }));
    const theirs = filed({ sheets: [...filed().sheets, { id: 's9', sheet: sheet('Only in the file') }] });
    expect(await restored(store, [theirs])).toEqual({
      bikesAdded: 0,
      versionsKept: 1,
      sheetsAdded: 1,
      sheetsBeside: 1,
      bikesSame: 0,
      lessonsAdded: 0,
      lessonsBeside: 0,
      picturesAdded: 0,
    });
    expect((await value(store.load('one')))?.text).toBe(here);
    expect((await value(store.revisions('one'))).map(({ text }) => text)).toEqual([
      saveDocument(theirs.document),
    ]);
    const places = (await value(store.sheets('one'))).map(({ text }) => /"place": "(.*)"/.exec(text)?.[1]);
    expect(new Set(places)).toEqual(new Set(['Put right here', 'Invented hill road', 'Only in the file']));
    expect(await restored(store, [theirs])).toMatchObject({
      versionsKept: 0,
      sheetsAdded: 0,
      sheetsBeside: 0,
    });
  });
});
