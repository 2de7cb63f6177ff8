/** The store in the browser's own database (IndexedDB). */
import type { StoreNames } from 'idb';
import { fail, succeed } from '../core/numeric/result.ts';
import { latestFirst, listed, listedAmong, readEntry, sheetsAmong, withSheets } from './bike-index.ts';
import type { BikeStore, ListedBike, Stored, StoredSheet, WholeBike } from './bike-store.ts';
import { openShelves, PREFERENCES_KEY, type Database, type Shelves } from './browser-shelves.ts';
import { lessonsAmong } from './kept-lessons.ts';
import { forgetLeft, isAnyLeft, leaveWrite } from './left-writes.ts';
import { readRecord, shelfOf } from './read-record.ts';
import { faultOf, storageFault } from './storage-fault.ts';
import { putAll, saveIn, setAside, writeWhole, type Within } from './shelf-writes.ts';
import { withinTime } from './within-time.ts';

const BESIDE = ['index', 'sheets', 'pictures', 'revisions', 'originals'] as const;

/** A database that has not answered by then will not, ms: another tab may hold it, or the disk may be failing. */
const LONGEST_ANSWER_MS = 5000;
/** A shop's years of bikes and sheets, and all that lies beside one bike, take longer to write. */
const LONGEST_MOVE_MS = 300_000;
/** Entries of the index that are read in one go: a letter that is typed meanwhile waits for no more than these. */
const ENTRIES_AT_ONCE = 200;
/** Sheets of a bike that are read in one go: all texts of thousands would take longer than an answer may. */
const SHEETS_AT_ONCE = 200;

/** Every entry of the index by its bike's id, read in parts, between which the page can answer a hand. */
async function entriesIn(database: Database): Promise<Map<string, ListedBike>> {
  const { store } = database.transaction('index');
  const entries = new Map<string, ListedBike>();
  let range: IDBKeyRange | null = null;
  for (;;) {
    const [keys, part]: [string[], unknown[]] = await Promise.all([
      store.getAllKeys(range, ENTRIES_AT_ONCE),
      store.getAll(range, ENTRIES_AT_ONCE),
    ]);
    for (const [id, entry] of listedAmong(part)) entries.set(id, entry);
    const last = keys.at(-1);
    if (last === undefined || keys.length < ENTRIES_AT_ONCE) return entries;
    range = IDBKeyRange.lowerBound(last, true);
  }
}

/** The sheets of a bike in time order, read in parts: a browser does not hand out all texts of thousands at once. */
async function sheetsIn(within: Within<IDBTransactionMode>, bikeId: string): Promise<StoredSheet[]> {
  const shelf = within.objectStore('sheets');
  const ids = await shelf.index('bikeId').getAllKeys(bikeId);
  const records: unknown[] = [];
  for (let from = 0; from < ids.length; from += SHEETS_AT_ONCE)
    records.push(
      ...(await Promise.all(ids.slice(from, from + SHEETS_AT_ONCE).map(async (id) => shelf.get(id)))),
    );
  return sheetsAmong(records);
}

/** A bike with all that lies beside it but its sheets; null when there is none. */
async function withoutSheets(
  within: Within<IDBTransactionMode>,
  id: string,
): Promise<Omit<WholeBike, 'sheets'> | null> {
  const read = readRecord(await within.objectStore('bikes').get(id));
  if (!read.ok) return null;
  const [entry, revisions, originals, pictures] = await Promise.all([
    within.objectStore('index').get(id),
    within.objectStore('revisions').index('id').getAll(id),
    within.objectStore('originals').index('id').getAll(id),
    within.objectStore('pictures').index('bikeId').getAll(id),
  ]);
  return {
    bike: read.value,
    card: listed(read.value, readEntry(entry)).card,
    revisions: shelfOf(revisions).bikes,
    originals,
    pictures,
  };
}

/** Brings the index up to the sheets that a bike has, all of which are read. A sheet of a bike that is not stored changes nothing there. */
async function countSheets(within: Within<'readwrite'>, bikeId: string): Promise<void> {
  const entry = listedAmong([await within.objectStore('index').get(bikeId)]).get(bikeId);
  if (entry === undefined) return;
  await within.objectStore('index').put(withSheets(entry, await sheetsIn(within, bikeId)));
}

/** The same after a sheet that was not there before, without a look at the others: a bike may have thousands. */
async function countOneMore(within: Within<'readwrite'>, { bikeId, day }: StoredSheet): Promise<void> {
  const entry = listedAmong([await within.objectStore('index').get(bikeId)]).get(bikeId);
  if (entry === undefined) return;
  const sheets = await within.objectStore('sheets').index('bikeId').count(bikeId);
  const latestSheet = entry.latestSheet !== null && entry.latestSheet > day ? entry.latestSheet : day;
  await within.objectStore('index').put({ ...entry, sheets, latestSheet });
}

/** The same after a sheet has gone; the others are looked at only where it was of the latest day. */
async function countOneLess(within: Within<'readwrite'>, { bikeId, day }: StoredSheet): Promise<void> {
  const entry = listedAmong([await within.objectStore('index').get(bikeId)]).get(bikeId);
  if (entry === undefined) return;
  if (entry.latestSheet === day) {
    await countSheets(within, bikeId);
    return;
  }
  const sheets = await within.objectStore('sheets').index('bikeId').count(bikeId);
  await within.objectStore('index').put({ ...entry, sheets });
}

/** Saves the changes that pages had not saved when they were left. That is rare, so its code is fetched only then. */
async function settled(database: Database): Promise<Database> {
  if (isAnyLeft())
    try {
      const { settleLeft } = await import('./settle-left.ts');
      await settleLeft(database);
    } catch {
      // It stays for the next time; a fault that lasts shows at the next save, which says it.
    }
  return database;
}

/**
 * A store in the browser's database. Nothing is opened before the first use, and a connection that the browser ends
 * is opened anew; so no fault lasts.
 */
export function browserStore(): BikeStore {
  let connection: Promise<Database> | null = null;
  const connect = (): Promise<Database> => {
    connection ??= openShelves(() => {
      connection = null;
    }).then(settled);
    return connection;
  };

  /** Every use goes through here, so that none can throw, reject or hang. */
  const using = async <T>(
    use: (database: Database) => Promise<T>,
    longestMs = LONGEST_ANSWER_MS,
  ): Stored<T> => {
    try {
      // Where storage is forbidden, even looking at it may throw.
      if (typeof indexedDB === 'undefined') return fail(storageFault('missing'));
      const answer = await withinTime(connect().then(use), longestMs);
      if (answer.ok) return succeed(answer.value);
      connection = null;
      return fail(storageFault('silent'));
    } catch (error) {
      connection = null;
      return fail(faultOf(error));
    }
  };

  const writing = <T>(
    shelves: StoreNames<Shelves>[],
    write: (within: Within<'readwrite'>) => Promise<T>,
    longestMs?: number,
  ): Stored<T> => using((database) => writeWhole(database, shelves, write), longestMs);

  const putting = <Name extends StoreNames<Shelves>>(
    shelf: Name,
    record: Shelves[Name]['value'],
  ): Stored<null> =>
    writing([shelf], async (within) => {
      await putAll(within, shelf, [record]);
      return null;
    });

  const clearing = (shelf: 'lessons' | 'pictures', id: string): Stored<null> =>
    writing([shelf], async (within) => {
      await within.objectStore(shelf).delete(id);
      return null;
    });

  /** Each part in a transaction of its own, so that a save does not wait for all of them. */
  const sheetsOf = async (bikeId: string): Stored<readonly StoredSheet[]> => {
    const ids = await using((database) => database.getAllKeysFromIndex('sheets', 'bikeId', bikeId));
    if (!ids.ok) return ids;
    const records: unknown[] = [];
    for (let from = 0; from < ids.value.length; from += SHEETS_AT_ONCE) {
      const part = ids.value.slice(from, from + SHEETS_AT_ONCE);
      const read = await using((database) => {
        const { store } = database.transaction('sheets');
        return Promise.all(part.map((id) => store.get(id)));
      });
      if (!read.ok) return read;
      records.push(...read.value);
    }
    return succeed(sheetsAmong(records));
  };

  return {
    shortLived: null,
    list: () =>
      using(async (database) => {
        const [keys, known, beside] = await Promise.all([
          database.getAllKeys('bikes'),
          entriesIn(database),
          database.getAll('revisions'),
        ]);
        // What the index does not name is read itself: it is no bike, or a former build wrote it.
        const missing = keys.filter((key) => !known.has(key));
        const { bikes, unreadable } = shelfOf(
          await Promise.all(missing.map((key) => database.get('bikes', key))),
        );
        const stored = new Set<IDBValidKey>(keys);
        return {
          bikes: [
            ...[...known.values()].filter(({ id }) => stored.has(id)),
            ...bikes.map((bike) => listed(bike, null)),
          ].sort(latestFirst),
          unreadable: [...unreadable, ...shelfOf(beside).unreadable],
        };
      }),
    load: (id) =>
      using(async (database) => {
        const read = readRecord(await database.get('bikes', id));
        return read.ok ? read.value : null;
      }),
    save: (write) => writing(['bikes', 'index', 'revisions'], (within) => saveIn(within, write)),
    leave: (write) => void leaveWrite(write),
    forgetLeft,
    saveCard: (id, card) =>
      writing(['bikes', 'index'], async (within) => {
        const index = within.objectStore('index');
        const read = readRecord(await within.objectStore('bikes').get(id));
        if (read.ok) await index.put({ ...listed(read.value, readEntry(await index.get(id))), card });
        return null;
      }),
    remove: (id) =>
      writing(
        ['bikes', ...BESIDE],
        async (within) => {
          const beside = await withoutSheets(within, id);
          const whole = beside && { ...beside, sheets: await sheetsIn(within, id) };
          const sheets = within.objectStore('sheets');
          const pictures = within.objectStore('pictures');
          const revisions = within.objectStore('revisions');
          const originals = within.objectStore('originals');
          for (const key of await sheets.index('bikeId').getAllKeys(id)) await sheets.delete(key);
          for (const key of await pictures.index('bikeId').getAllKeys(id)) await pictures.delete(key);
          for (const key of await revisions.index('id').getAllKeys(id)) await revisions.delete(key);
          for (const key of await originals.index('id').getAllKeys(id)) await originals.delete(key);
          await within.objectStore('bikes').delete(id);
          await within.objectStore('index').delete(id);
          return whole;
        },
        LONGEST_MOVE_MS,
      ),
    putBack: ({ bike, card, sheets, revisions, originals, pictures }) =>
      writing(
        ['bikes', ...BESIDE],
        async (within) => {
          await Promise.all([
            putAll(within, 'bikes', [bike]),
            putAll(within, 'index', [withSheets(listed(bike, { card }), sheets)]),
            putAll(within, 'sheets', sheets),
            putAll(within, 'revisions', revisions),
            putAll(within, 'originals', originals),
            putAll(within, 'pictures', pictures),
          ]);
          return null;
        },
        LONGEST_MOVE_MS,
      ),
    whole: async (id) => {
      const beside = await using((database) => withoutSheets(database.transaction(['bikes', ...BESIDE]), id));
      if (!beside.ok) return beside;
      if (beside.value === null) return succeed(null);
      const sheets = await sheetsOf(id);
      return sheets.ok ? succeed({ ...beside.value, sheets: sheets.value }) : sheets;
    },
    add: ({ bikes, versions, sheets, lessons, pictures }) =>
      writing(
        ['bikes', 'index', 'sheets', 'revisions', 'lessons', 'pictures'],
        async (within) => {
          for (const { bike, card } of bikes) {
            // What another tab has put there meanwhile, or cannot be read, stays beside it.
            const there: unknown = await within.objectStore('bikes').get(bike.id);
            const read = readRecord(there);
            if (there !== undefined)
              await within.objectStore('revisions').put(read.ok ? read.value : setAside(there, bike));
            await within.objectStore('bikes').put(bike);
            await within.objectStore('index').put(listed(bike, { card }));
          }
          await Promise.all([
            putAll(within, 'revisions', versions),
            putAll(within, 'sheets', sheets),
            putAll(within, 'lessons', lessons),
            putAll(within, 'pictures', pictures),
          ]);
          for (const bikeId of new Set(sheets.map((sheet) => sheet.bikeId)))
            await countSheets(within, bikeId);
          return null;
        },
        LONGEST_MOVE_MS,
      ),
    sheetIds: () => using((database) => database.getAllKeys('sheets')),
    sheets: sheetsOf,
    saveSheet: (sheet) =>
      writing(['index', 'sheets'], async (within) => {
        const sheets = within.objectStore('sheets');
        const before: unknown = await sheets.get(sheet.id);
        const [there] = sheetsAmong([before]);
        await sheets.put(sheet);
        if (before === undefined) await countOneMore(within, sheet);
        // A note that was put right changes nothing in the index.
        else if (there?.day !== sheet.day || there.bikeId !== sheet.bikeId)
          await countSheets(within, sheet.bikeId);
        return null;
      }),
    removeSheet: (id) =>
      writing(['index', 'sheets'], async (within) => {
        const [sheet] = sheetsAmong([await within.objectStore('sheets').get(id)]);
        await within.objectStore('sheets').delete(id);
        if (sheet !== undefined) await countOneLess(within, sheet);
        return null;
      }),
    lessons: () => using(async (database) => lessonsAmong(await database.getAll('lessons'))),
    saveLesson: (lesson) => putting('lessons', lesson),
    removeLesson: (id) => clearing('lessons', id),
    keepPicture: (picture) => putting('pictures', picture),
    pictures: (bikeId) => using((database) => database.getAllFromIndex('pictures', 'bikeId', bikeId)),
    removePicture: (id) => clearing('pictures', id),
    revisions: (id) =>
      using(async (database) => {
        const { bikes } = shelfOf(await database.getAllFromIndex('revisions', 'id', id));
        return [...bikes].sort(latestFirst);
      }),
    keepRevision: (version) => putting('revisions', version),
    removeRevision: (id, writer) =>
      using(async (database) => {
        await database.delete('revisions', [id, writer]);
        return null;
      }),
    keepOriginal: (original) =>
      using(async (database) => {
        const transaction = database.transaction('originals', 'readwrite');
        const there = await transaction.store.index('id').getAll(original.id);
        if (!there.some((each) => each.text === original.text)) await transaction.store.put(original);
        await transaction.done;
        return null;
      }),
    originals: (id) => using((database) => database.getAllFromIndex('originals', 'id', id)),
    removeOriginal: (id, keptAt) =>
      using(async (database) => {
        await database.delete('originals', [id, keptAt]);
        return null;
      }),
    loadPreferences: () =>
      using(
        async (database): Promise<unknown> => (await database.get('preferences', PREFERENCES_KEY)) ?? null,
      ),
    savePreferences: (preferences) =>
      using(async (database) => {
        const transaction = database.transaction('preferences', 'readwrite');
        const put = transaction.store.put(preferences, PREFERENCES_KEY);
        // Asked for together with the write, so that a page left at this instant does not take the last choice with it.
        transaction.commit();
        return Promise.all([put, transaction.done]).then(() => null);
      }),
    close: () => {
      const open = connection;
      connection = null;
      // A connection that never opened has nothing to close, and its fault is reported already.
      void open?.then(
        (database) => database.close(),
        () => undefined,
      );
    },
  };
}
