/** The shelves of the browser's database (IndexedDB), each version of it, and how a former one is brought up to it. */
import { openDB, type DBSchema, type IDBPDatabase } from 'idb';
import { listed } from './bike-index.ts';
import type { KeptPicture, Original } from './bike-store.ts';
import { shelfOf } from './read-record.ts';

/** A record may not be what was written, so it goes through `readRecord` or the index's readers. */
export interface Shelves extends DBSchema {
  bikes: { key: string; value: unknown };
  index: { key: string; value: unknown };
  sheets: { key: string; value: unknown; indexes: { bikeId: string } };
  pictures: { key: string; value: KeptPicture; indexes: { bikeId: string } };
  revisions: { key: [string, string]; value: unknown; indexes: { id: string } };
  originals: { key: [string, number]; value: Original; indexes: { id: string } };
  preferences: { key: string; value: object };
  lessons: { key: string; value: unknown };
}

export const DATABASE = 'sidestance';
const VERSION = 3;
/** Where the shelf of preferences has its one record. */
export const PREFERENCES_KEY = 'preferences';

export type Database = IDBPDatabase<Shelves>;

/** `onGone` is called once the connection is of no use any more. */
export function openShelves(onGone: () => void): Promise<Database> {
  return openDB<Shelves>(DATABASE, VERSION, {
    async upgrade(database, from, _to, transaction) {
      if (from < 1) {
        database.createObjectStore('bikes', { keyPath: 'id' });
        database.createObjectStore('revisions', { keyPath: ['id', 'writer'] }).createIndex('id', 'id');
        database.createObjectStore('originals', { keyPath: ['id', 'keptAt'] }).createIndex('id', 'id');
        database.createObjectStore('preferences');
      }
      if (from < 2) {
        const index = database.createObjectStore('index', { keyPath: 'id' });
        database.createObjectStore('sheets', { keyPath: 'id' }).createIndex('bikeId', 'bikeId');
        database.createObjectStore('pictures', { keyPath: 'id' }).createIndex('bikeId', 'bikeId');
        const { bikes } = shelfOf(await transaction.objectStore('bikes').getAll());
        for (const bike of bikes) await index.put(listed(bike, null));
      }
      if (from < 3) database.createObjectStore('lessons', { keyPath: 'id' });
    },
    // A newer build in another tab wants to change the database: let it, and open again at the next use.
    blocking(_current, _blocked, event) {
      (event.target as IDBDatabase).close();
      onGone();
    },
    terminated: onGone,
  });
}
