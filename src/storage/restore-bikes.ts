/** Brings bikes and sheets of a file into the store beside what is there: nothing on either side is lost. */
import { fail, succeed, type Result } from '../core/numeric/result.ts';
import type { FiledBike } from '../document/bikes-file.ts';
import { saveDocument } from '../document/save-document.ts';
import { saveSheet } from '../document/save-sheet.ts';
import type { BikeStore, StoredSheet } from './bike-store.ts';
import type { StorageFault } from './storage-fault.ts';

export interface Restored {
  /** Bikes that were not there before. */
  readonly bikesAdded: number;
  /** Bikes that were there in another state: the file's is kept beside as another version. */
  readonly versionsKept: number;
  readonly sheetsAdded: number;
  /** Sheets that were there with other words: the file's is kept as a sheet of its own. */
  readonly sheetsBeside: number;
}

export interface RestoreOptions {
  /** Milliseconds since 1970, UTC. */
  readonly now: number;
  readonly newId: () => string;
}

/**
 * Merges the bikes of a file into the store. A bike that is there and says the same stays as it is; one in another
 * state stays too, and the file's is kept beside it as another version. Sheets are joined by their id. Stops at the
 * first fault of the store, with what was done until then in place.
 */
export async function restoreBikes(
  store: BikeStore,
  bikes: readonly FiledBike[],
  { now, newId }: RestoreOptions,
): Promise<Result<Restored, StorageFault>> {
  const counts = { bikesAdded: 0, versionsKept: 0, sheetsAdded: 0, sheetsBeside: 0 };
  for (const { id, card, document, sheets } of bikes) {
    const text = saveDocument(document);
    const { name } = document.bike;
    const there = await store.load(id);
    if (!there.ok) return fail(there.reason);
    if (there.value === null) {
      const saved = await store.save({ id, name, writer: newId(), savedAt: now, text, known: null });
      if (!saved.ok) return fail(saved.reason);
      const noted = await store.saveCard(id, card);
      if (!noted.ok) return fail(noted.reason);
      counts.bikesAdded++;
    } else if (there.value.text !== text) {
      const beside = await store.revisions(id);
      if (!beside.ok) return fail(beside.reason);
      if (!beside.value.some((version) => version.text === text)) {
        const kept = await store.keepRevision({ id, name, revision: 0, writer: newId(), savedAt: now, text });
        if (!kept.ok) return fail(kept.reason);
        counts.versionsKept++;
      }
    }
    const own = await store.sheets(id);
    if (!own.ok) return fail(own.reason);
    for (const { id: sheetId, sheet } of sheets) {
      const filed = { bikeId: id, day: sheet.day, madeAt: sheet.madeAt, text: saveSheet(sheet) };
      if (own.value.some((each) => each.text === filed.text)) continue;
      const isTaken = own.value.some((each) => each.id === sheetId);
      const stored: StoredSheet = { id: isTaken ? newId() : sheetId, ...filed };
      const saved = await store.saveSheet(stored);
      if (!saved.ok) return fail(saved.reason);
      if (isTaken) counts.sheetsBeside++;
      else counts.sheetsAdded++;
    }
  }
  return succeed(counts);
}
