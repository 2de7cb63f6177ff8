/** Saves a bike by itself soon after each change, and says whether it is kept. */
import type { BikeDocument } from '../document/document.ts';
import { saveDocument } from '../document/save-document.ts';
import type { BikeStore, BikeWrite, StoredBike } from './bike-store.ts';
import { statusOf, type SaveStatus } from './save-status.ts';

/** How long changes have to pause before the last of them is saved, ms. The first after a pause is put down at once. */
export const QUIET_MS = 80;
/** The longest that a change waits while others follow, ms; with the writing itself a crash loses at most a second. */
export const LONGEST_WAIT_MS = 800;
/** When a save that failed is tried again by itself, ms. */
export const RETRY_MS = 10_000;

export interface AutosaveOptions {
  readonly store: BikeStore;
  readonly id: string;
  /** This tab's line of work; a new one for each document opened. */
  readonly writer: string;
  /** The revision the document was opened from; null for one that is not stored yet. */
  readonly revision: number | null;
  /** Milliseconds since 1970, UTC. */
  readonly now: () => number;
  readonly onStatus: (status: SaveStatus) => void;
  /** Called after every save that came through, for a notice to other tabs. */
  readonly onSaved?: (revision: number, savedAt: number, name: string) => void;
  /** Called after a save that found no bike under its id and kept what lay there beside. */
  readonly onUnreadable?: () => void;
  /** Called after a save of a bike that the store no longer held. */
  readonly onGone?: () => void;
}

export class Autosave {
  readonly #options: AutosaveOptions;
  #known: number | null;
  #unsaved: BikeDocument | null = null;
  /** What a save under way is about. */
  #underWay: BikeDocument | null = null;
  /** What was last put down, until it or what came after it is saved. */
  #left: BikeDocument | null = null;
  #waitingSince = 0;
  #savedAt: number | null = null;
  /** Runs for as long as a change is followed by another, or until a save that failed is tried again. */
  #timer: ReturnType<typeof setTimeout> | undefined;
  #writing: Promise<void> | null = null;
  /** What a save under way goes on with once it is done: the one that was due meanwhile, or everything that waits. */
  #next: 'none' | 'one' | 'all' = 'none';
  #conflict: StoredBike | null = null;
  #status: SaveStatus;

  constructor(options: AutosaveOptions) {
    this.#options = options;
    this.#known = options.revision;
    const { shortLived } = options.store;
    this.#status = shortLived
      ? statusOf(shortLived)
      : { state: 'saved', revision: options.revision, savedAt: null };
    options.onStatus(this.#status);
  }

  get status(): SaveStatus {
    return this.#status;
  }

  /** The revision last opened or written; null before the first save. */
  get revision(): number | null {
    return this.#known;
  }

  /** Whether there are changes that no store has taken. */
  get hasUnsaved(): boolean {
    return this.#unsaved !== null || this.#writing !== null;
  }

  /** Takes the document as it now is; it is saved once changes pause, or after the longest wait. The first after a pause is put down at once, which takes a database longer. */
  change(document: BikeDocument): void {
    const now = this.#options.now();
    if (this.#unsaved === null) this.#waitingSince = now;
    this.#unsaved = document;
    const left = this.#waitingSince + LONGEST_WAIT_MS - now;
    if (this.#timer === undefined) this.#putDown(document);
    this.#later(Math.max(0, Math.min(QUIET_MS, left)));
  }

  /** Saves what is waiting now. Resolves when nothing is, or when it could not be saved, which the status then says. */
  flush(): Promise<void> {
    this.#rest();
    return this.#write('all');
  }

  /** The page may be gone at once: puts down what waits, and saves it as ever in case the page stays. */
  leave(): Promise<void> {
    const document = this.#unsaved ?? this.#underWay;
    if (document !== null) this.#putDown(document);
    return this.flush();
  }

  /** The user has seen that another tab's work was kept; the notice may go. */
  acknowledgeConflict(): void {
    if (this.#conflict === null) return;
    this.#conflict = null;
    if (this.#status.state === 'conflict')
      this.#report({ state: 'saved', revision: this.#known, savedAt: this.#savedAt });
  }

  /** Saves what is waiting and stops trying again; for when another document takes the page. */
  async stop(): Promise<void> {
    await this.flush();
    this.#rest();
  }

  #putDown(document: BikeDocument): void {
    if (document === this.#left) return;
    this.#left = document;
    this.#options.store.leave(this.#asWritten(document));
  }

  #rest(): void {
    clearTimeout(this.#timer);
    this.#timer = undefined;
  }

  #later(waitMs: number): void {
    this.#rest();
    this.#timer = setTimeout(() => {
      this.#timer = undefined;
      if (this.#unsaved === null) return;
      void this.#write('one');
      this.#later(QUIET_MS);
    }, waitMs);
  }

  #write(next: 'one' | 'all'): Promise<void> {
    if (this.#unsaved === null && this.#writing === null) return Promise.resolve();
    if (this.#next !== 'all') this.#next = next;
    this.#writing ??= this.#writeWhatIsDue().finally(() => {
      this.#next = 'none';
      this.#writing = null;
    });
    return this.#writing;
  }

  async #writeWhatIsDue(): Promise<void> {
    const { store, id, writer, onSaved, onUnreadable, onGone } = this.#options;
    while (this.#unsaved !== null && this.#next !== 'none') {
      if (this.#next === 'one') this.#next = 'none';
      const document = this.#unsaved;
      this.#unsaved = null;
      this.#underWay = document;
      // A notice of trouble stays until a save has come through.
      if (this.#status.state === 'saved') this.#report({ state: 'saving' });
      const write = this.#asWritten(document);
      const saved = await store.save(write);
      this.#underWay = null;
      if (!saved.ok) {
        this.#unsaved ??= document;
        this.#waitingSince = this.#options.now();
        this.#report(statusOf(saved.reason));
        this.#later(RETRY_MS);
        return;
      }
      const { revision, kept } = saved.value;
      const { savedAt, name } = write;
      this.#known = revision;
      this.#savedAt = savedAt;
      this.#conflict = kept ?? this.#conflict;
      // Unless something newer was put down meanwhile.
      if (this.#left !== null && this.#left !== this.#unsaved) {
        this.#left = null;
        store.forgetLeft(id, writer);
      }
      onSaved?.(revision, savedAt, name);
      if (saved.value.foundUnreadable) onUnreadable?.();
      if (saved.value.foundGone) onGone?.();
      this.#report(this.#afterSave(revision, savedAt));
    }
  }

  #asWritten(document: BikeDocument): BikeWrite {
    const { id, writer, now } = this.#options;
    const { name } = document.bike;
    return { id, name, writer, savedAt: now(), text: saveDocument(document), known: this.#known };
  }

  #afterSave(revision: number, savedAt: number): SaveStatus {
    const { shortLived } = this.#options.store;
    if (shortLived) return statusOf(shortLived);
    if (this.#conflict === null) return { state: 'saved', revision, savedAt };
    return {
      state: 'conflict',
      sentence:
        'This bike was also changed in another tab. Both versions are kept: yours is here, the other is in the list of bikes.',
      otherWriter: this.#conflict.writer,
      otherSavedAt: this.#conflict.savedAt,
    };
  }

  #report(status: SaveStatus): void {
    this.#status = status;
    this.#options.onStatus(status);
  }
}
