/** Tests of what every store does with bikes, their cards, sheets and pictures: in memory and in the browser's database. */
import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { EMPTY_CARD } from './bike-index.ts';
import type { BikeStore, BikeWrite, Stored, StoredSheet } from './bike-store.ts';
import { browserStore } from './browser-store.ts';
import { memoryStore } from './memory-store.ts';

const write = (more: Partial<BikeWrite> = {}): BikeWrite => ({
  id: 'one',
  name: 'One',
  writer: 'a',
  savedAt: 1,
  text: '{}',
  known: null,
  ...more,
});

const sheet = (more: Partial<StoredSheet> = {}): StoredSheet => ({
  id: 's1',
  bikeId: 'one',
  day: '2026-05-02',
  madeAt: 10,
  text: '{}',
  ...more,
});

async function value<T>(stored: Stored<T>): Promise<T> {
  const result = await stored;
  if (!result.ok) throw new Error(result.reason.sentence);
  return result.value;
}

describe.each([
  ['in memory', () => memoryStore(null)],
  ['in the browser’s database', browserStore],
] as const)('a store %s', (_, make) => {
  let store: BikeStore;

  beforeEach(() => {
    globalThis.indexedDB = new IDBFactory();
    store = make();
  });

  afterEach(() => store.close());

  it('lists bikes from the index, with their card, how many sheets they have and the day of the latest', async () => {
    await value(store.save(write()));
    await value(store.save(write({ id: 'two', name: 'Two', savedAt: 2 })));
    const card = { owner: 'Ada', notes: 'Low seat', tags: ['track'], archived: true };
    await value(store.saveCard('one', card));
    await value(store.saveSheet(sheet()));
    await value(store.saveSheet(sheet({ id: 's2', day: '2026-06-01' })));
    expect((await value(store.list())).bikes).toEqual([
      {
        id: 'two',
        name: 'Two',
        revision: 1,
        writer: 'a',
        savedAt: 2,
        card: EMPTY_CARD,
        sheets: 0,
        latestSheet: null,
      },
      {
        id: 'one',
        name: 'One',
        revision: 1,
        writer: 'a',
        savedAt: 1,
        card,
        sheets: 2,
        latestSheet: '2026-06-01',
      },
    ]);
  });

  it('keeps lessons in the order they were made, beside all bikes', async () => {
    const lesson = { id: 'l1', madeAt: 5, text: '{}' };
    await value(store.saveLesson(lesson));
    await value(store.saveLesson({ ...lesson, id: 'l0', madeAt: 9 }));
    await value(store.saveLesson({ ...lesson, text: '[]' }));
    expect(await value(store.lessons())).toEqual([
      { ...lesson, text: '[]' },
      { ...lesson, id: 'l0', madeAt: 9 },
    ]);
    await value(store.save(write()));
    await value(store.remove('one'));
    await value(store.removeLesson('l1'));
    expect(await value(store.lessons())).toEqual([{ ...lesson, id: 'l0', madeAt: 9 }]);
  });

  it('keeps card and sheets of a bike through its next save', async () => {
    await value(store.save(write()));
    await value(store.saveCard('one', { ...EMPTY_CARD, owner: 'Ada' }));
    await value(store.saveSheet(sheet()));
    await value(store.save(write({ known: 1, name: 'First', savedAt: 5 })));
    expect((await value(store.list())).bikes).toMatchObject([
      { name: 'First', revision: 2, card: { owner: 'Ada' }, sheets: 1 },
    ]);
  });

  it('gives sheets in time order, those of one day as they were made, and counts anew as one goes', async () => {
    await value(store.save(write()));
    for (const each of [
      sheet({ id: 'c', day: '2026-07-01' }),
      sheet({ id: 'b', madeAt: 20 }),
      sheet({ id: 'a', madeAt: 10 }),
      sheet({ id: 'other', bikeId: 'two' }),
    ])
      await value(store.saveSheet(each));
    expect((await value(store.sheets('one'))).map(({ id }) => id)).toEqual(['a', 'b', 'c']);
    await value(store.removeSheet('c'));
    expect((await value(store.list())).bikes).toMatchObject([{ sheets: 2, latestSheet: '2026-05-02' }]);
  });

  it('removes a bike whole, nothing of another, and puts it back as it was', async () => {
    for (const id of ['one', 'two']) {
      await value(store.save(write({ id })));
      await value(store.save(write({ id, writer: 'b', text: '[]' })));
      await value(store.saveCard(id, { ...EMPTY_CARD, notes: id }));
      await value(store.saveSheet(sheet({ id: `sheet-${id}`, bikeId: id })));
      await value(store.keepOriginal({ id, keptAt: 1, text: 'x' }));
      await value(store.keepPicture({ id: `picture-${id}`, bikeId: id, keptAt: 1, blob: new Blob([id]) }));
    }
    const before = await value(store.list());
    const whole = await value(store.remove('one'));
    expect((await value(store.list())).bikes).toMatchObject([{ id: 'two', sheets: 1 }]);
    for (const left of [
      store.sheets('one'),
      store.revisions('one'),
      store.originals('one'),
      store.pictures('one'),
    ])
      expect(await value<readonly unknown[]>(left)).toEqual([]);
    expect(await value(store.revisions('two'))).toHaveLength(1);
    if (whole === null) throw new Error('nothing was taken out');
    await value(store.putBack(whole));
    const after = await value(store.list());
    expect(new Set(after.bikes)).toEqual(new Set(before.bikes));
    expect(await value(store.sheets('one'))).toHaveLength(1);
    expect(await value(store.revisions('one'))).toHaveLength(1);
    expect(await value(store.originals('one'))).toHaveLength(1);
    expect(await value(store.pictures('one'))).toHaveLength(1);
    expect(await value(store.remove('three'))).toBeNull();
  });
});
