/** Tests of bikes that come from files: one that is here already, and a file of several. */
import { afterEach, describe, expect, it, vi } from 'vitest';
import { begun, endAll, names, road, track } from '../../../tests/support/kept-tab.ts';
import { openBikes, saveBikes } from '../../document/bikes-file.ts';
import type { JsonObject } from '../../document/json/json.ts';
import { LESSONS } from '../../lessons/all-lessons.ts';
import { saveLesson } from '../../lessons/save-lesson.ts';
import { saveEverything } from './bike-files.ts';
import { saveSheet } from '../../document/save-sheet.ts';
import { newSheet } from '../../document/sheet.ts';
import { saveDocument } from '../../document/save-document.ts';
import { memoryStore } from '../../storage/memory-store.ts';

afterEach(async () => {
  await endAll();
  vi.restoreAllMocks();
});

/** Files that the page gives to the browser's downloads, from now on. */
function downloads(): { readonly data: Blob; readonly name: string }[] {
  const saved: { data: Blob; name: string }[] = [];
  let data = new Blob();
  vi.stubGlobal('URL', { createObjectURL: (blob: Blob) => (data = blob), revokeObjectURL: () => {} });
  vi.stubGlobal('document', {
    createElement: () => ({
      download: '',
      click() {
        saved.push({ data, name: this.download });
      },
      remove: () => {},
    }),
    body: { append: () => {} },
  });
  return saved;
}

describe('a file of a bike that is here already', () => {
  it('opens the one that is here, says so and adds none; a bike that differs comes beside it', async () => {
    const store = memoryStore(null);
    const { bench, keeping, turn, fork, leave } = await begun(store);
    const file = (text: string) => new File([text], 'mine.json');
    turn(9);
    await leave();
    const text = saveDocument(bench.session.history.present);
    await keeping.openFiles([file(text)]);
    expect(keeping.message?.text).toBe('Opened mine.json. This bike was here already, so none was added.');
    // It is on the page, and what can be undone there stays.
    expect(bench.session.canUndo).toBe(true);
    const { bikeId } = keeping;
    await keeping.startWith(track);
    await keeping.openFiles([file(text)]);
    expect([keeping.bikeId, fork()]).toEqual([bikeId, 9]);
    expect(await names(store)).toEqual([road.bike.name]);
    turn(11);
    await leave();
    await keeping.openFiles([file(text)]);
    expect(keeping.message?.text).toBe('Opened mine.json.');
    await leave();
    expect(fork()).toBe(9);
    expect(await names(store)).toEqual([road.bike.name, road.bike.name]);
  });

  it('is counted among those of several files, and added once where two files hold it', async () => {
    const store = memoryStore(null);
    const { keeping } = await begun(store);
    const file = new File([saveDocument(track)], 'track.json');
    await keeping.openFiles([file, file]);
    expect(keeping.message?.text).toBe(
      'Brought back one bike. What was here is as it was. One bike was here already.',
    );
    await keeping.openFiles([file, file]);
    expect(keeping.message).toMatchObject({ kind: 'done', text: 'Everything was here already.' });
    expect(await names(store)).toEqual([track.bike.name]);
  });
});

describe('a file of several bikes', () => {
  it('is brought back beside what is there, and the bike on the page stays', async () => {
    const store = memoryStore(null);
    const { bench, keeping, turn, leave } = await begun(store);
    turn(9);
    await leave();
    const card = { owner: '', notes: '', tags: [], archived: false };
    const bikes = [road, track].map((document, i) => ({ id: `filed-${i}`, card, document, sheets: [] }));
    await keeping.openFiles([new File([saveBikes(bikes, 5)], 'shop.json')]);
    expect(keeping.message).toMatchObject({
      kind: 'done',
      text: 'Brought back 2 bikes. What was here is as it was.',
    });
    expect(bench.session.document.setup.forkTubes).toBe(9);
    expect((await names(store)).sort()).toEqual([road.bike.name, road.bike.name, track.bike.name].sort());
  });

  it('brings its lessons, names one that is damaged, and a save of everything holds them again', async () => {
    const store = memoryStore(null);
    const { keeping } = await begun(store);
    const lesson = JSON.parse(saveLesson({ lesson: LESSONS[2], asSet: null })) as JsonObject;
    const lessons = [
      { id: 'l1', madeAt: 3, lesson },
      { id: 'l2', madeAt: 4, lesson: { ...lesson, title: '' } },
      { id: 'l3', madeAt: 5, lesson: { ...lesson, schema: 9 } },
    ];
    const card = { owner: '', notes: '', tags: [], archived: false };
    const bikes = [{ id: 'filed', card, document: road, sheets: [] }];
    await keeping.openFiles([new File([saveBikes(bikes, 5, lessons)], 'shop.json')]);
    expect(keeping.message).toEqual({
      kind: 'warning',
      text: 'Brought back one bike and one lesson. What was here is as it was.',
      details: [
        'shop.json: Lesson 2 of the file was left out. The lesson’s title (title) is "" but must be text of at most 200 characters.',
        'shop.json: Lesson 3 of the file was left out. The lesson was saved by a newer Sidestance (schema 9); this one reads up to schema 1.',
      ],
    });
    expect(await names(store)).toEqual([road.bike.name]);
    await store.saveLesson({ id: 'l9', madeAt: 9, text: '{' });
    const saved = downloads();
    try {
      const message = await saveEverything(store);
      expect(message.text).toMatch(/^One bike with 0 sheets, and one lesson, saved to /);
      expect(message.details).toEqual([
        expect.stringMatching(/^A lesson is not in the file\. The file breaks off before its end/),
      ]);
      const opened = openBikes(await saved[0].data.text());
      expect(opened).toMatchObject({ ok: true, value: { lessons: [lessons[0]], report: [] } });
    } finally {
      vi.unstubAllGlobals();
    }
  });

  it('is several files where one would be too large, and together they bring back all bikes, sheets and pictures', async () => {
    const store = memoryStore(null);
    const { bike, setup } = road;
    const sheetOf = (felt: string): string =>
      saveSheet(
        newSheet({ day: '2026-05-02', madeAt: 5, bike, setup, notes: { felt }, further: [], readings: {} }),
      );
    const card = { owner: 'Invented owner', notes: '', tags: [], archived: false };
    const sheetsOf = { few: 2, many: 9, none: 0 };
    const picture = new Blob([new Uint8Array([1, 2, 3])], { type: 'image/png' });
    vi.stubGlobal('createImageBitmap', () => Promise.resolve({ close: () => {} }));
    for (const [id, count] of Object.entries(sheetsOf))
      await store.putBack({
        bike: { id, name: id, revision: 1, writer: 'a', savedAt: 5, text: saveDocument(road) },
        card,
        sheets: Array.from({ length: count }, (_, i) => ({
          ...{ id: `${id}-${i}`, bikeId: id, day: '2026-05-02', madeAt: i },
          text: sheetOf(`${id} ${i}`),
        })),
        ...{ revisions: [], originals: [] },
        pictures: id === 'many' ? [{ id: 'p', bikeId: id, keptAt: 7, blob: picture }] : [],
      });
    const saved = downloads();
    // Room for a bike and four sheets.
    const most = saveDocument(road).length + 4 * sheetOf('many 1').length + 1000;
    try {
      let message = await saveEverything(store, most);
      while (message.rest !== undefined) {
        expect(message.kind).toBe('warning');
        expect(message.text).toMatch(/ this is part \d, and the rest is still to be saved\.$/);
        expect(message.rest.label).toBe(`Save part ${saved.length + 1}`);
        message = await message.rest.save();
      }
      expect(message.kind).toBe('done');
      expect(saved.length).toBeGreaterThanOrEqual(4);
      for (const [i, { data, name }] of saved.entries()) {
        expect(name).toMatch(new RegExp(`-part-${i + 1}\\.sidestance-bikes\\.json$`));
        expect(data.size).toBeLessThan(1.3 * most);
      }
      const back = memoryStore(null);
      const { keeping } = await begun(back);
      await keeping.openFiles(saved.map(({ data, name }) => new File([data], name)));
      expect(keeping.message?.text).toMatch(/^Brought back 3 bikes, 11 sheets and one picture\./);
      for (const [id, count] of Object.entries(sheetsOf)) {
        const whole = await back.whole(id);
        expect(whole).toMatchObject({ value: { card, bike: { text: saveDocument(road) } } });
        const texts = (each: Awaited<ReturnType<typeof store.whole>>): readonly string[] =>
          each.ok ? (each.value?.sheets ?? []).map(({ text }) => text).sort() : [];
        expect(texts(whole)).toHaveLength(count);
        expect(texts(whole)).toEqual(texts(await store.whole(id)));
      }
    } finally {
      vi.unstubAllGlobals();
    }
  });

  it('with a hundred thousand unreadable sheets brings its bike and names the first of them', async () => {
    const store = memoryStore(null);
    const { keeping } = await begun(store);
    const card = { owner: '', notes: '', tags: [], archived: false };
    const text = saveBikes([{ id: 'filed', card, document: road, sheets: [] }], 5);
    const odd = Array.from({ length: 100_000 }, (_, i) => `{"id":"s${i}","sheet":{}}`).join();
    const file = new File([text.replace('"sheets": []', `"sheets": [${odd}]`)], 'shop.json');
    await keeping.openFiles([file]);
    expect(keeping.message).toMatchObject({
      kind: 'warning',
      text: 'Brought back one bike. What was here is as it was.',
    });
    expect(keeping.message?.details).toHaveLength(21);
    expect(keeping.message?.details[0]).toMatch(/^shop\.json: Sheet 1 of .* was left out\./);
    expect(keeping.message?.details[20]).toBe('And 99980 more lines like these.');
    expect(await store.sheets('filed')).toMatchObject({ value: [] });
  });

  it('of more than 300 MB is refused without being read', async () => {
    const store = memoryStore(null);
    const { keeping } = await begun(store);
    const head = '{"format":"sidestance-bikes","schema":1,"bikes":[]}';
    const file = Object.defineProperty(new File([head], 'years.json'), 'size', { value: 400_000_000 });
    const read = vi.spyOn(file, 'arrayBuffer');
    await keeping.openFiles([file]);
    expect(keeping.message).toMatchObject({ kind: 'error', text: 'Nothing was brought back.' });
    expect(keeping.message?.details[0]).toMatch(/^years\.json was not opened\. The file is 400\.0 MB/);
    expect(read).not.toHaveBeenCalled();
    expect(await names(store)).toEqual([]);
  });

  it('that is cut off changes nothing and says so', async () => {
    const store = memoryStore(null);
    const { keeping } = await begun(store);
    await keeping.openFiles([new File(['{"format":"sidestance-bikes","schema":1,"bikes":['], 'cut.json')]);
    expect(keeping.message).toMatchObject({ kind: 'error', text: 'Nothing was brought back.' });
    expect(await names(store)).toEqual([]);
  });
});
