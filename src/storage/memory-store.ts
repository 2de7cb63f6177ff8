/** A store that lasts as long as the page, for when the browser gives none. */
import { solved } from '../core/numeric/result.ts';
import type { BikeStore, BikeSummary, Original, StoredBike } from './bike-store.ts';
import { settleWrite } from './settle-write.ts';
import type { StorageFault } from './storage-fault.ts';

export function latestFirst(a: BikeSummary, b: BikeSummary): number {
  return b.savedAt - a.savedAt;
}

export function summaryOf({ id, name, revision, writer, savedAt }: StoredBike): BikeSummary {
  return { id, name, revision, writer, savedAt };
}

/** `shortLived` says why this one is used, and the user sees it for as long as it is. */
export function memoryStore(shortLived: StorageFault | null): BikeStore {
  const bikes = new Map<string, StoredBike>();
  let revisions: readonly StoredBike[] = [];
  let originals: readonly Original[] = [];
  let preferences: object | null = null;
  return {
    shortLived,
    list: async () => solved({ bikes: [...bikes.values()].sort(latestFirst).map(summaryOf), unreadable: [] }),
    load: async (id) => solved(bikes.get(id) ?? null),
    save: async (write) => {
      const { next, kept } = settleWrite(bikes.get(write.id) ?? null, write);
      bikes.set(write.id, next);
      if (kept !== null)
        revisions = [...revisions.filter((r) => r.id !== kept.id || r.writer !== kept.writer), kept];
      return solved({ revision: next.revision, kept });
    },
    remove: async (id) => {
      bikes.delete(id);
      revisions = revisions.filter((each) => each.id !== id);
      originals = originals.filter((each) => each.id !== id);
      return solved(null);
    },
    revisions: async (id) => solved(revisions.filter((each) => each.id === id).sort(latestFirst)),
    removeRevision: async (id, writer) => {
      revisions = revisions.filter((each) => each.id !== id || each.writer !== writer);
      return solved(null);
    },
    keepOriginal: async (original) => {
      if (!originals.some((each) => each.id === original.id && each.text === original.text))
        originals = [...originals, original];
      return solved(null);
    },
    originals: async (id) => solved(originals.filter((each) => each.id === id)),
    loadPreferences: async () => solved(preferences),
    savePreferences: async (next) => {
      preferences = next;
      return solved(null);
    },
    close: () => {},
  };
}
