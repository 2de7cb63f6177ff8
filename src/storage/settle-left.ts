/** Saves the changes that pages had not saved when they were left. */
import type { BikeWrite } from './bike-store.ts';
import { PREFERENCES_KEY, type Database } from './browser-shelves.ts';
import { forgetLeft, leftKeys } from './left-writes.ts';
import { readRecord, readWrite } from './read-record.ts';
import { settleWrite } from './settle-write.ts';
import { putAll, saveIn, writeWhole, type Within } from './shelf-writes.ts';
import type { StoredPreferences } from './stored-preferences.ts';

type LastBike = Pick<StoredPreferences, 'lastBike'>;

/** Saves such a change of one page. What somebody else saved later stays the bike, and this goes beside it. */
async function settleIn(within: Within<'readwrite'>, write: BikeWrite): Promise<void> {
  const there = readRecord(await within.objectStore('bikes').get(write.id));
  if (!there.ok) await saveIn(within, write);
  else if (there.value.text !== write.text) {
    const isOlder = there.value.writer !== write.writer && there.value.savedAt > write.savedAt;
    if (isOlder) await putAll(within, 'revisions', [settleWrite(null, write).next]);
    else await saveIn(within, write);
  }
}

/** The write in a text; null where it holds none, and then it stays where it is. */
function writeIn(text: string | null): BikeWrite | null {
  try {
    return readWrite(JSON.parse(text ?? 'null'));
  } catch {
    return null;
  }
}

/** Saves all that was left, the oldest first, in one go; the last of these bikes is the one to come back to. */
export async function settleLeft(database: Database): Promise<void> {
  const left = leftKeys()
    .map((key) => writeIn(localStorage.getItem(key)))
    .filter((write) => write !== null)
    .sort((a, b) => a.savedAt - b.savedAt);
  const last = left.at(-1);
  if (last === undefined) return;
  await writeWhole(database, ['bikes', 'index', 'revisions', 'preferences'], async (within) => {
    for (const write of left) await settleIn(within, write);
    const preferences = within.objectStore('preferences');
    const before = await preferences.get(PREFERENCES_KEY);
    await preferences.put({ ...before, lastBike: last.id } satisfies LastBike, PREFERENCES_KEY);
  });
  for (const { id, writer } of left) forgetLeft(id, writer);
}
