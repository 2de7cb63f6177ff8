/** Saves a bike by itself soon after each change, and says whether it is kept. */
import type { BikeDocument } from '../document/document.ts';
import { saveDocument } from '../document/save-document.ts';
import type { BikeStore, StoredBike } from './bike-store.ts';
import { statusOf, type SaveStatus } from './save-status.ts';

/** How long after the last change a save begins, ms: the save too is done 200 ms after it, before a quick hand closes the tab. */
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
  #waitingSince = 0;
  #savedAt: number | null = null;
  #timer: ReturnType<typeof setTimeout> | undefined;
  #writing: Promise<void> | null = null;
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

  /** Takes the document as it now is; it is saved once changes pause, or after the longest wait. */
  change(document: BikeDocument): void {
    const now = this.#options.now();
    if (this.#unsaved === null) this.#waitingSince = now;
    this.#unsaved = document;
    const left = this.#waitingSince + LONGEST_WAIT_MS - now;
    this.#later(Math.max(0, Math.min(QUIET_MS, left)));
  }

  /** Saves what is waiting now. Resolves when nothing is, or when it could not be saved, which the status then says. */
  flush(): Promise<void> {
    clearTimeout(this.#timer);
    if (this.#unsaved === null && this.#writing === null) return Promise.resolve();
    this.#writing ??= this.#writeAll().finally(() => {
      this.#writing = null;
    });
    return this.#writing;
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
    clearTimeout(this.#timer);
  }

  #later(waitMs: number): void {
    clearTimeout(this.#timer);
    this.#timer = setTimeout(() => void this.flush(), waitMs);
  }

  async #writeAll(): Promise<void> {
    const { store, id, writer, now, onSaved, onUnreadable, onGone } = this.#options;
    while (this.#unsaved !== null) {
      const document = this.#unsaved;
      this.#unsaved = null;
      // A notice of trouble stays until a save has come through.
      if (this.#status.state === 'saved') this.#report({ state: 'saving' });
      const savedAt = now();
      const text = saveDocument(document);
      const { name } = document.bike;
      const saved = await store.save({ id, name, writer, savedAt, text, known: this.#known });
      if (!saved.ok) {
        this.#unsaved ??= document;
        this.#waitingSince = now();
        this.#report(statusOf(saved.reason));
        this.#later(RETRY_MS);
        return;
      }
      const { revision, kept } = saved.value;
      this.#known = revision;
      this.#savedAt = savedAt;
      this.#conflict = kept ?? this.#conflict;
      onSaved?.(revision, savedAt, name);
      if (saved.value.foundUnreadable) onUnreadable?.();
      if (saved.value.foundGone) onGone?.();
      this.#report(this.#afterSave(revision, savedAt));
    }
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
