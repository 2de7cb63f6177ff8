/** The store in the browser's own database (IndexedDB). */
import { openDB, type DBSchema, type IDBPDatabase } from 'idb';
import { refused, solved } from '../core/numeric/result.ts';
import type { BikeStore, BikeWrite, Original, Stored } from './bike-store.ts';
import { latestFirst, summaryOf } from './memory-store.ts';
import { readRecord, shelfOf } from './read-record.ts';
import { settleWrite } from './settle-write.ts';
import { faultOf, storageFault } from './storage-fault.ts';
import { withinTime } from './within-time.ts';

/** A record may not be what was written, so it goes through `readRecord`. */
interface Shelves extends DBSchema {
  bikes: { key: string; value: unknown };
  revisions: { key: [string, string]; value: unknown; indexes: { id: string } };
  originals: { key: [string, number]; value: Original; indexes: { id: string } };
  preferences: { key: string; value: object };
}

const NAME = 'sidestance';
const VERSION = 1;
const PREFERENCES_KEY = 'preferences';

/** A database that has not answered by then will not, ms: another tab may hold it, or the disk may be failing. */
const LONGEST_ANSWER_MS = 5000;

type Database = IDBPDatabase<Shelves>;

function open(onGone: () => void): Promise<Database> {
  return openDB<Shelves>(NAME, VERSION, {
    upgrade(database) {
      database.createObjectStore('bikes', { keyPath: 'id' });
      database.createObjectStore('revisions', { keyPath: ['id', 'writer'] }).createIndex('id', 'id');
      database.createObjectStore('originals', { keyPath: ['id', 'keptAt'] }).createIndex('id', 'id');
      database.createObjectStore('preferences');
    },
    // A newer build in another tab wants to change the database: let it, and open again at the next use.
    blocking(_current, _blocked, event) {
      (event.target as IDBDatabase).close();
      onGone();
    },
    terminated: onGone,
  });
}

/** An unreadable record as it goes to the shelf of revisions: as it is, under a key that no tab has. */
function setAside(record: unknown, { id, savedAt }: BikeWrite): object {
  return { ...(record as object), id, writer: `unreadable-${savedAt}` };
}

/**
 * A store in the browser's database. Nothing is opened before the first use, and a connection that the browser ends
 * is opened anew; so a fault is never for ever.
 */
export function browserStore(): BikeStore {
  let connection: Promise<Database> | null = null;
  const connect = (): Promise<Database> => {
    connection ??= open(() => {
      connection = null;
    });
    return connection;
  };

  /** Every use goes through here, so that none can throw, reject or hang. */
  const using = async <T>(use: (database: Database) => Promise<T>): Stored<T> => {
    try {
      // Where storage is forbidden, even looking at it may throw.
      if (typeof indexedDB === 'undefined') return refused(storageFault('missing'));
      const answer = await withinTime(connect().then(use), LONGEST_ANSWER_MS);
      if (answer.ok) return solved(answer.value);
      connection = null;
      return refused(storageFault('silent'));
    } catch (error) {
      connection = null;
      return refused(faultOf(error));
    }
  };

  return {
    shortLived: null,
    list: () =>
      using(async (database) => {
        const { bikes, unreadable } = shelfOf(await database.getAll('bikes'));
        const beside = shelfOf(await database.getAll('revisions'));
        return {
          bikes: [...bikes].sort(latestFirst).map(summaryOf),
          unreadable: [...unreadable, ...beside.unreadable],
        };
      }),
    load: (id) =>
      using(async (database) => {
        const read = readRecord(await database.get('bikes', id));
        return read.ok ? read.value : null;
      }),
    save: (write) =>
      using(async (database) => {
        const transaction = database.transaction(['bikes', 'revisions'], 'readwrite');
        const bikes = transaction.objectStore('bikes');
        const there: unknown = await bikes.get(write.id);
        const read = readRecord(there);
        const { next, kept } = settleWrite(read.ok ? read.value : null, write);
        // A record that cannot be read is kept too.
        const beside = there === undefined || read.ok ? kept : setAside(there, write);
        await Promise.all([
          bikes.put(next),
          ...(beside === null ? [] : [transaction.objectStore('revisions').put(beside)]),
          transaction.done,
        ]);
        return { revision: next.revision, kept };
      }),
    remove: (id) =>
      using(async (database) => {
        const transaction = database.transaction(['bikes', 'revisions', 'originals'], 'readwrite');
        const revisions = transaction.objectStore('revisions');
        const originals = transaction.objectStore('originals');
        const revisionKeys = await revisions.index('id').getAllKeys(id);
        const originalKeys = await originals.index('id').getAllKeys(id);
        await Promise.all([
          transaction.objectStore('bikes').delete(id),
          ...revisionKeys.map((key) => revisions.delete(key)),
          ...originalKeys.map((key) => originals.delete(key)),
          transaction.done,
        ]);
        return null;
      }),
    revisions: (id) =>
      using(async (database) => {
        const { bikes } = shelfOf(await database.getAllFromIndex('revisions', 'id', id));
        return [...bikes].sort(latestFirst);
      }),
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
    loadPreferences: () =>
      using(
        async (database): Promise<unknown> => (await database.get('preferences', PREFERENCES_KEY)) ?? null,
      ),
    savePreferences: (preferences) =>
      using(async (database) => {
        await database.put('preferences', preferences, PREFERENCES_KEY);
        return null;
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
