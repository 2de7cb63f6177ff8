/** A place that keeps bikes: what it holds, and what the page can do with it. */
import type { Result } from '../core/numeric/result.ts';
import type { StorageFault } from './storage-fault.ts';

/** One saved state of a bike. */
export interface StoredBike {
  readonly id: string;
  readonly name: string;
  /** Counts the saves of this bike, whichever tab made them. */
  readonly revision: number;
  /** Which tab's line of work it belongs to; a tab that opens another document begins a new line. */
  readonly writer: string;
  /** Milliseconds since 1970, UTC. */
  readonly savedAt: number;
  /** The text as it would stand in a file. */
  readonly text: string;
}

export type BikeSummary = Omit<StoredBike, 'text'>;

/** A record that is no bike. It stays in the store as it is. */
export interface UnreadableRecord {
  /** The same each time a record is read, and different for every record. */
  readonly key: string;
  readonly sentence: string;
}

/** What lies on a shelf of the store. */
export interface Shelf<T> {
  readonly bikes: readonly T[];
  readonly unreadable: readonly UnreadableRecord[];
}

/** The next state of a bike, and the revision that its writer took for the last one. */
export interface BikeWrite {
  readonly id: string;
  readonly name: string;
  readonly writer: string;
  readonly savedAt: number;
  readonly text: string;
  /** The revision this writer opened or last wrote; null for a bike that it has not saved yet. */
  readonly known: number | null;
}

export interface SaveOutcome {
  readonly revision: number;
  /** Another tab's state that was not known to this writer and is kept beside; null when there was none. */
  readonly kept: StoredBike | null;
}

/** The text of a file or a stored bike as it was before it was repaired. */
export interface Original {
  readonly id: string;
  readonly keptAt: number;
  readonly text: string;
}

export type Stored<T> = Promise<Result<T, StorageFault>>;

/** No method throws or rejects; what went wrong is in the result. */
export interface BikeStore {
  /** Why nothing outlives this page; null when it does. */
  readonly shortLived: StorageFault | null;
  /** Bikes, the latest saved first, and the records that are not bikes. */
  list(): Stored<Shelf<BikeSummary>>;
  load(id: string): Stored<StoredBike | null>;
  /** Looks at what is there and writes in one go, so that no other tab's save falls between. */
  save(write: BikeWrite): Stored<SaveOutcome>;
  /** Removes the bike with its kept revisions and originals. */
  remove(id: string): Stored<null>;
  /** Other lines of work on this bike that were kept, latest first. */
  revisions(id: string): Stored<readonly StoredBike[]>;
  removeRevision(id: string, writer: string): Stored<null>;
  keepOriginal(original: Original): Stored<null>;
  originals(id: string): Stored<readonly Original[]>;
  /** Whatever was last given to savePreferences, as plain data; null when nothing was. */
  loadPreferences(): Stored<unknown>;
  savePreferences(preferences: object): Stored<null>;
  close(): void;
}
