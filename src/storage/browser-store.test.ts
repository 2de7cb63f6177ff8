/** Tests of the store in the browser's database, against a database in memory that follows the same standard. */
import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import { deleteDB, openDB } from 'idb';
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { EMPTY_CARD } from './bike-index.ts';
import type { BikeStore, BikeWrite, Stored } from './bike-store.ts';
import { DATABASE } from './browser-shelves.ts';
import { browserStore } from './browser-store.ts';

let store: BikeStore;

beforeEach(() => {
  globalThis.indexedDB = new IDBFactory();
  vi.stubGlobal('localStorage', new Texts());
  store = browserStore();
});

afterEach(() => {
  store.close();
  vi.unstubAllGlobals();
});

const write = (more: Partial<BikeWrite> = {}): BikeWrite => ({
  id: 'one',
  name: 'One',
  writer: 'a',
  savedAt: 1,
  text: '{}',
  known: null,
  ...more,
});

async function value<T>(stored: Stored<T>): Promise<T> {
  const result = await stored;
  if (!result.ok) throw new Error(result.reason.sentence);
  return result.value;
}

/** The database with so many bikes in it, saved one after another. */
async function filled(count: number) {
  await value(store.list());
  const raw = await openDB(DATABASE);
  const within = raw.transaction(['bikes', 'index'], 'readwrite');
  for (let i = 0; i < count; i++) {
    const summary = { id: `bike-${i}`, name: `Bike ${i}`, revision: 1, writer: 'a', savedAt: i };
    void within.objectStore('bikes').put({ ...summary, text: '{}' });
    void within.objectStore('index').put({ ...summary, card: EMPTY_CARD, sheets: 0, latestSheet: null });
  }
  await within.done;
  return raw;
}

it('reads what the index does not name: a bike of a former build is listed, what is no bike is reported', async () => {
  await value(store.save(write()));
  const raw = await openDB(DATABASE);
  await raw.put('bikes', { id: 'bare', text: '{}' });
  await raw.put('bikes', { id: 'wrong', text: 7 });
  await raw.put('index', { id: 'one', name: 7 });
  raw.close();
  const { bikes, unreadable } = await value(store.list());
  expect(bikes.map(({ id, name }) => [id, name])).toEqual([
    ['one', 'One'],
    ['bare', 'Bike without a name'],
  ]);
  expect(unreadable.map(({ sentence }) => sentence)).toEqual([
    'A record without a name is not a bike: its text is the number 7.',
  ]);
});

it('opens the database of the first build with every bike, version, original and preference in it', async () => {
  const first = await openDB(DATABASE, 1, {
    upgrade(database) {
      database.createObjectStore('bikes', { keyPath: 'id' });
      database.createObjectStore('revisions', { keyPath: ['id', 'writer'] }).createIndex('id', 'id');
      database.createObjectStore('originals', { keyPath: ['id', 'keptAt'] }).createIndex('id', 'id');
      database.createObjectStore('preferences');
    },
  });
  const bike = { id: 'one', name: 'One', revision: 3, writer: 'a', savedAt: 9, text: '{"a":1}' };
  await first.put('bikes', bike);
  await first.put('bikes', { id: 'wrong', text: null });
  await first.put('revisions', { ...bike, writer: 'b' });
  await first.put('originals', { id: 'one', keptAt: 4, text: 'old' });
  await first.put('preferences', { theme: 'sun' }, 'preferences');
  first.close();
  const { bikes, unreadable } = await value(store.list());
  expect(bikes).toMatchObject([{ id: 'one', revision: 3, savedAt: 9, card: EMPTY_CARD, sheets: 0 }]);
  expect(unreadable).toHaveLength(1);
  expect(await value(store.load('one'))).toEqual(bike);
  expect(await value(store.revisions('one'))).toEqual([{ ...bike, writer: 'b' }]);
  expect(await value(store.originals('one'))).toEqual([{ id: 'one', keptAt: 4, text: 'old' }]);
  expect(await value(store.loadPreferences())).toEqual({ theme: 'sun' });
});

/** The store as the next page finds it. */
function openedAnew(): BikeStore {
  store.close();
  store = browserStore();
  return store;
}

/** Stands for the browser's storage of texts. */
class Texts extends Map<string, string> {
  setItem(key: string, text: string): void {
    this.set(key, text);
    Object.assign(this, { [key]: text });
  }
  getItem(key: string): string | null {
    return this.get(key) ?? null;
  }
  removeItem(key: string): void {
    this.delete(key);
    Reflect.deleteProperty(this, key);
  }
}

it('settles what a page was left with, for whoever opens the store next', async () => {
  await value(store.save(write()));
  await value(store.savePreferences({ theme: 'sun', lastBike: 'two' }));
  store.leave(write({ known: 1, text: '[1]', savedAt: 2 }));
  store.leave(write({ id: 'new', text: '[2]' }));
  expect(await value(store.load('one'))).toMatchObject({ text: '{}' });
  const next = openedAnew();
  expect(await value(next.load('one'))).toMatchObject({ text: '[1]', revision: 2, writer: 'a' });
  expect((await value(next.list())).bikes).toMatchObject([{ savedAt: 2 }, { id: 'new' }]);
  expect(await value(next.revisions('one'))).toEqual([]);
  expect(await value(next.loadPreferences())).toEqual({ theme: 'sun', lastBike: 'one' });
  await value(next.save(write({ known: 2, text: '[3]' })));
  expect(await value(openedAnew().load('one'))).toMatchObject({ text: '[3]', revision: 3 });
});

it('keeps both where another tab saved too: the later of them is the bike, the other lies beside', async () => {
  for (const [savedAt, bikeText, besideText] of [
    [9, '["left"]', '["tab"]'],
    [4, '["tab"]', '["left"]'],
  ] as const) {
    const id = `bike-${savedAt}`;
    await value(store.save(write({ id })));
    store.leave(write({ id, known: 1, text: '["left"]', savedAt }));
    await value(store.save(write({ id, writer: 'b', known: 1, text: '["tab"]', savedAt: 6 })));
    const next = openedAnew();
    expect(await value(next.load(id))).toMatchObject({ text: bikeText });
    expect(await value(next.revisions(id))).toMatchObject([{ text: besideText }]);
  }
});

it('settles nothing that was saved after all, and opens where what was left is no bike or cannot be settled', async () => {
  await value(store.save(write()));
  store.leave(write({ known: 1, text: '[1]' }));
  store.forgetLeft('one', 'a');
  for (const odd of ['{"id":"odd","text":7}', '{"id"', ''])
    localStorage.setItem(`sidestance-left ${odd}`, odd);
  expect(await value(openedAnew().load('one'))).toMatchObject({ text: '{}', revision: 1 });
  store.leave(write({ known: 1, text: '[2]' }));
  const original = IDBObjectStore.prototype.put;
  IDBObjectStore.prototype.put = () => {
    throw new DOMException('full', 'QuotaExceededError');
  };
  try {
    expect(await value(openedAnew().load('one'))).toMatchObject({ text: '{}' });
  } finally {
    IDBObjectStore.prototype.put = original;
  }
  expect(await value(openedAnew().load('one'))).toMatchObject({ text: '[2]' });
});

it('a save and the list read no other bike', async () => {
  for (let i = 0; i < 50; i++) await value(store.save(write({ id: `bike-${i}` })));
  const read: string[] = [];
  const { getAll } = IDBObjectStore.prototype;
  IDBObjectStore.prototype.getAll = function (...asked: Parameters<typeof getAll>) {
    read.push(this.name);
    return getAll.apply(this, asked);
  };
  try {
    await value(store.save(write({ id: 'bike-7', known: 1, text: '[]' })));
    expect(read).toEqual([]);
    await value(store.list());
    expect(read).not.toContain('bikes');
  } finally {
    IDBObjectStore.prototype.getAll = getAll;
  }
});

it('reads thousands of sheets in parts, in time order, also of a bike that is saved or goes whole, and no other for one that comes, is put right or goes', async () => {
  await value(store.save(write()));
  const many = 1001;
  const raw = await openDB(DATABASE);
  const within = raw.transaction('sheets', 'readwrite');
  const sheet = (i: number, day = '2026-05-02') => ({
    ...{ id: `s${i}`, bikeId: 'one', day, madeAt: i, text: '{}' },
  });
  for (let i = 0; i < many; i++) void within.store.put(sheet(i));
  await within.done;
  raw.close();
  const found = await value(store.sheets('one'));
  expect(found.map(({ madeAt }) => madeAt)).toEqual(Array.from({ length: many }, (_, i) => i));
  const { getAll } = IDBIndex.prototype;
  IDBIndex.prototype.getAll = () => {
    throw new Error('read all');
  };
  try {
    await value(store.saveSheet(sheet(5000, '2026-06-01')));
    await value(store.saveSheet({ ...sheet(5000, '2026-06-01'), text: '[]' }));
    await value(store.removeSheet('s7'));
  } finally {
    IDBIndex.prototype.getAll = getAll;
  }
  expect((await value(store.list())).bikes).toMatchObject([{ sheets: many, latestSheet: '2026-06-01' }]);
  await value(store.removeSheet('s5000'));
  expect((await value(store.list())).bikes).toMatchObject([{ sheets: many - 1, latestSheet: '2026-05-02' }]);
  IDBIndex.prototype.getAll = function (...given) {
    if (this.objectStore.name === 'sheets') throw new Error('read all');
    return getAll.apply(this, given);
  };
  try {
    const whole = await value(store.whole('one'));
    expect(whole?.sheets).toHaveLength(many - 1);
    const gone = await value(store.remove('one'));
    expect(gone).toEqual(whole);
    expect(await value(store.sheets('one'))).toEqual([]);
    if (gone !== null) await value(store.putBack(gone));
    expect(await value(store.whole('one'))).toEqual(whole);
  } finally {
    IDBIndex.prototype.getAll = getAll;
  }
});

it('lists every bike of an index that is read in many parts', async () => {
  const raw = await filled(1003);
  raw.close();
  const { bikes, unreadable } = await value(store.list());
  expect(new Set(bikes.map(({ id }) => id)).size).toBe(1003);
  expect(bikes.map(({ savedAt }) => savedAt)).toEqual(Array.from({ length: 1003 }, (_, i) => 1002 - i));
  expect(unreadable).toEqual([]);
});

it('a save over what is no bike keeps that beside, and says that it found it', async () => {
  await value(store.save(write()));
  const open = await openDB(DATABASE);
  await open.put('bikes', { id: 'one', name: 'Odd', text: 7 });
  open.close();
  expect(await value(store.save(write({ known: 1, text: '[]' })))).toMatchObject({ foundUnreadable: true });
  const { bikes, unreadable } = await value(store.list());
  expect(bikes.map(({ id }) => id)).toEqual(['one']);
  expect(unreadable.map(({ sentence }) => sentence)).toEqual([
    '“Odd” is not a bike: its text is the number 7.',
  ]);
  expect(await value(store.save(write({ known: 2, text: '{}' })))).not.toHaveProperty('foundUnreadable');
});

it('saves a bike again that the browser has cleared, and says that it was gone', async () => {
  expect(await value(store.save(write()))).not.toHaveProperty('foundGone');
  await deleteDB(DATABASE);
  expect(await value(store.save(write({ known: 1, text: '[]' })))).toEqual({
    revision: 2,
    kept: null,
    foundGone: true,
  });
  expect(await value(store.load('one'))).toMatchObject({ text: '[]', revision: 2 });
  expect(await value(store.save(write({ known: 2 })))).not.toHaveProperty('foundGone');
});

it('takes a file’s bikes, versions, sheets, lessons and pictures whole, or nothing of them where one write is refused', async () => {
  const bike = { id: 'two', name: 'Two', writer: 'b', savedAt: 3, text: '{}', revision: 1 };
  const addition = {
    bikes: [{ bike, card: EMPTY_CARD }],
    versions: [{ ...bike, id: 'one', revision: 0 }],
    sheets: ['s1', 's2'].map((id) => ({ id, bikeId: 'two', day: '2026-05-02', madeAt: 1, text: '{}' })),
    lessons: [{ id: 'l1', madeAt: 1, text: '{}' }],
    pictures: [{ id: 'p1', bikeId: 'two', keptAt: 1, blob: new Blob(['p']) }],
  };
  await value(store.save(write()));
  const before = await value(store.list());
  const original = IDBObjectStore.prototype.put;
  IDBObjectStore.prototype.put = function (this: IDBObjectStore, ...given) {
    if (this.name === 'lessons') throw new DOMException('full', 'QuotaExceededError');
    return original.apply(this, given);
  };
  const refused = await store.add(addition);
  IDBObjectStore.prototype.put = original;
  expect(refused).toMatchObject({ ok: false, reason: { kind: 'full' } });
  expect(await value(store.list())).toEqual(before);
  expect(await value(store.revisions('one'))).toEqual([]);
  expect(await value(store.sheets('two'))).toEqual([]);
  expect(await value(store.pictures('two'))).toEqual([]);
  await value(store.add(addition));
  expect(await value(store.lessons())).toEqual(addition.lessons);
  expect(await value(store.pictures('two'))).toMatchObject([{ id: 'p1' }]);
  expect((await value(store.list())).bikes).toMatchObject([{ id: 'two', sheets: 2 }, { id: 'one' }]);
  expect(await value(store.revisions('one'))).toHaveLength(1);
});

it('keeps a record that is no bike beside the bike that a file brings under its id', async () => {
  await value(store.save(write()));
  const raw = await openDB(DATABASE);
  await raw.put('bikes', { id: 'two', text: 7 });
  const bike = { id: 'two', name: 'Two', writer: 'b', savedAt: 3, text: '{}', revision: 1 };
  await value(
    store.add({ bikes: [{ bike, card: EMPTY_CARD }], versions: [], sheets: [], lessons: [], pictures: [] }),
  );
  expect(await raw.getAll('revisions')).toMatchObject([{ id: 'two', text: 7 }]);
  raw.close();
});
