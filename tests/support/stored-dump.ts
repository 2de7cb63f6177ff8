/** What lies in the browser's database, shelf by shelf, and putting it into an empty one. */
import { IDBFactory } from 'fake-indexeddb';
import { openDB } from 'idb';
import { DATABASE } from '../../src/storage/browser-shelves.ts';
import { browserStore } from '../../src/storage/browser-store.ts';

export const SHELVES = ['bikes', 'index', 'sheets', 'pictures', 'revisions', 'originals', 'lessons'] as const;

export type Shelf = (typeof SHELVES)[number];
export type Dump = Readonly<Record<Shelf, readonly unknown[]>>;

export const EMPTY: Dump = Object.fromEntries(SHELVES.map((shelf) => [shelf, []])) as unknown as Dump;

export async function dumped(): Promise<Dump> {
  const database = await openDB(DATABASE);
  const shelves: [Shelf, unknown[]][] = [];
  for (const shelf of SHELVES) shelves.push([shelf, await database.getAll(shelf)]);
  database.close();
  return Object.fromEntries(shelves) as unknown as Dump;
}

/** An empty database with the records of a dump in it. */
export async function filledWith(dump: Dump): Promise<void> {
  globalThis.indexedDB = new IDBFactory();
  const maker = browserStore();
  await maker.list();
  maker.close();
  const database = await openDB(DATABASE);
  const transaction = database.transaction(SHELVES, 'readwrite');
  for (const shelf of SHELVES)
    for (const record of dump[shelf]) await transaction.objectStore(shelf).put(record);
  await transaction.done;
  database.close();
}
