/** Writes to the shelves of the browser's database, each whole or not at all. */
import type { IDBPTransaction, StoreNames } from 'idb';
import { listed, readEntry } from './bike-index.ts';
import type { BikeWrite, SaveOutcome } from './bike-store.ts';
import type { Database, Shelves } from './browser-shelves.ts';
import { readRecord } from './read-record.ts';
import { settleWrite } from './settle-write.ts';

export type Within<Mode extends IDBTransactionMode> = IDBPTransaction<Shelves, StoreNames<Shelves>[], Mode>;

/** Writes in one transaction: where anything goes wrong, nothing of it is there, and no write before goes in alone. */
export async function writeWhole<T>(
  database: Database,
  shelves: StoreNames<Shelves>[],
  write: (within: Within<'readwrite'>) => Promise<T>,
): Promise<T> {
  const transaction = database.transaction(shelves, 'readwrite');
  let ended = false;
  const end = (): boolean => (ended = true);
  // Its failure is the same as that of the write, which is given on.
  transaction.done.then(end, end);
  try {
    const answer = await write(transaction);
    await transaction.done;
    return answer;
  } catch (error) {
    if (!ended) transaction.abort();
    throw error;
  }
}

/** Puts records on a shelf. One that is refused at once fails only here, so that every other write still reports how it ended. */
export async function putAll<Name extends StoreNames<Shelves>>(
  within: Within<'readwrite'>,
  name: Name,
  records: readonly Shelves[Name]['value'][],
): Promise<void> {
  await Promise.all(records.map(async (record) => within.objectStore(name).put(record)));
}

/** An unreadable record as it goes to the shelf of revisions: as it is, under a key that no tab has. */
export function setAside(record: unknown, { id, savedAt }: Pick<BikeWrite, 'id' | 'savedAt'>): object {
  return { ...(record as object), id, writer: `unreadable-${savedAt}` };
}

/** Looks at what lies under a bike's id and writes over it; what its writer did not know of stays beside. */
export async function saveIn(within: Within<'readwrite'>, write: BikeWrite): Promise<SaveOutcome> {
  const bikes = within.objectStore('bikes');
  const index = within.objectStore('index');
  const [there, entry]: [unknown, unknown] = await Promise.all([bikes.get(write.id), index.get(write.id)]);
  const read = readRecord(there);
  const { next, kept } = settleWrite(read.ok ? read.value : null, write);
  // A record that cannot be read is kept too.
  const beside = there === undefined || read.ok ? kept : setAside(there, write);
  await Promise.all([
    putAll(within, 'bikes', [next]),
    putAll(within, 'index', [listed(next, readEntry(entry))]),
    putAll(within, 'revisions', beside === null ? [] : [beside]),
  ]);
  const { revision } = next;
  if (there === undefined)
    return { revision, kept, ...(write.known !== null && { foundGone: true as const }) };
  return { revision, kept, ...(!read.ok && { foundUnreadable: true as const }) };
}
