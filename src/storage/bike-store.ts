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

/** What a shop keeps about a bike beside its measures. */
export interface BikeCard {
  readonly owner: string;
  readonly notes: string;
  readonly tags: readonly string[];
  /** An archived bike stays, out of the way of those that are worked on. */
  readonly archived: boolean;
}

/** A bike in the list: what the index says of it, so that no list reads the bikes themselves. */
export interface ListedBike extends BikeSummary {
  readonly card: BikeCard;
  /** How many setup sheets it has, and the day of the latest; null without one. */
  readonly sheets: number;
  readonly latestSheet: string | null;
}

/** A setup sheet of a bike as it is stored. */
export interface StoredSheet {
  readonly id: string;
  readonly bikeId: string;
  /** The day it belongs to, as 2026-11-26. */
  readonly day: string;
  /** Milliseconds since 1970, UTC. */
  readonly madeAt: number;
  /** The text as it would stand in a file. */
  readonly text: string;
}

/** A trainer's own lesson as it is stored. It belongs to no bike of the list: its own is in its text. */
export interface StoredLesson {
  readonly id: string;
  /** When it was made, which is its place in the list. Milliseconds since 1970, UTC. */
  readonly madeAt: number;
  /** The text as it would stand in a file. */
  readonly text: string;
}

/** A picture that belongs to a bike, as it was given. */
export interface KeptPicture {
  readonly id: string;
  readonly bikeId: string;
  readonly keptAt: number;
  readonly blob: Blob;
}

/** A bike with all that lies beside it, as taken out of the store: what puts it back. */
export interface WholeBike {
  readonly bike: StoredBike;
  readonly card: BikeCard;
  readonly sheets: readonly StoredSheet[];
  readonly revisions: readonly StoredBike[];
  readonly originals: readonly Original[];
  readonly pictures: readonly KeptPicture[];
}

/** What a file brings into the store. */
export interface Addition {
  readonly bikes: readonly Pick<WholeBike, 'bike' | 'card'>[];
  /** Versions to keep beside the bikes of their ids. */
  readonly versions: readonly StoredBike[];
  readonly sheets: readonly StoredSheet[];
  readonly lessons: readonly StoredLesson[];
  readonly pictures: readonly KeptPicture[];
}

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
  /** Set where what lay under the bike's id was no bike: it is kept beside as it is. */
  readonly foundUnreadable?: true;
  /** Set where the writer knew the bike as stored, and it was gone: deleted in another tab, or cleared by the browser. */
  readonly foundGone?: true;
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
  list(): Stored<Shelf<ListedBike>>;
  load(id: string): Stored<StoredBike | null>;
  /** Looks at what is there and writes in one go, so that no other tab's save falls between. */
  save(write: BikeWrite): Stored<SaveOutcome>;
  /** Puts a write down at once, as far as the browser can, for a page that may be gone before it is saved: whoever opens the store next settles it. */
  leave(write: BikeWrite): void;
  /** What a writer left is saved, and need not be settled. */
  forgetLeft(id: string, writer: string): void;
  /** What the list says of a bike that is stored; a bike that is not there stays away. */
  saveCard(id: string, card: BikeCard): Stored<null>;
  /** Removes the bike with all that lies beside it, and gives it back whole; null when there is none. */
  remove(id: string): Stored<WholeBike | null>;
  /** Puts a bike back as it was taken out, beside whatever came since. */
  putBack(whole: WholeBike): Stored<null>;
  /** A bike with all that lies beside it; null when there is none. */
  whole(id: string): Stored<WholeBike | null>;
  /** Takes all of it or, where anything goes wrong, nothing. */
  add(addition: Addition): Stored<null>;
  /** The id of every sheet in the store, whichever bike it belongs to. */
  sheetIds(): Stored<readonly string[]>;
  /** Its setup sheets in time order. A record that is no sheet stays in the store and is left out. */
  sheets(bikeId: string): Stored<readonly StoredSheet[]>;
  saveSheet(sheet: StoredSheet): Stored<null>;
  removeSheet(id: string): Stored<null>;
  /** A trainer's own lessons, as they were made. A record that is no lesson stays in the store and is left out. */
  lessons(): Stored<readonly StoredLesson[]>;
  saveLesson(lesson: StoredLesson): Stored<null>;
  removeLesson(id: string): Stored<null>;
  keepPicture(picture: KeptPicture): Stored<null>;
  pictures(bikeId: string): Stored<readonly KeptPicture[]>;
  removePicture(id: string): Stored<null>;
  /** Other lines of work on this bike that were kept, latest first. */
  revisions(id: string): Stored<readonly StoredBike[]>;
  /** Keeps a version beside the bike of its id. */
  keepRevision(version: StoredBike): Stored<null>;
  removeRevision(id: string, writer: string): Stored<null>;
  keepOriginal(original: Original): Stored<null>;
  originals(id: string): Stored<readonly Original[]>;
  removeOriginal(id: string, keptAt: number): Stored<null>;
  /** Whatever was last given to savePreferences, as plain data; null when nothing was. */
  loadPreferences(): Stored<unknown>;
  savePreferences(preferences: object): Stored<null>;
  close(): void;
}
