/** Keeping bikes: saved by themselves, opened from the browser's store or a file, and what went wrong in words. */
import type { BikeDocument } from '../document/document.ts';
import { openDocument } from '../document/open-document.ts';
import type { Repair } from '../document/repair.ts';
import { Autosave } from '../storage/autosave.ts';
import { downloadBike, readBikeFile } from '../storage/bike-file.ts';
import type { BikeStore, BikeSummary, StoredBike } from '../storage/bike-store.ts';
import { browserStore } from '../storage/browser-store.ts';
import { newId } from '../storage/new-id.ts';
import { openStore } from '../storage/open-store.ts';
import { openStored } from '../storage/open-stored.ts';
import { saveOnLeaving } from '../storage/save-on-leaving.ts';
import type { SaveStatus } from '../storage/save-status.ts';
import { readPreferences } from '../storage/stored-preferences.ts';
import { browserChannel, TabNotices, type TabNotice } from '../storage/tab-notices.ts';
import type { Workbench } from './workbench.svelte.ts';

export type MessageKind = 'note' | 'done' | 'warning' | 'error';

/** Something to tell that stays until it is dismissed. */
export interface Message {
  readonly kind: MessageKind;
  readonly text: string;
  readonly details: readonly string[];
}

/** What can be done when the other line of work on a bike was kept. */
export interface OtherWork {
  readonly stored: StoredBike;
}

export class Keeping {
  readonly #bench: Workbench;
  #store: BikeStore | null = null;
  #autosave: Autosave | null = null;
  #notices: TabNotices | null = null;
  #begun = $state(false);
  /** The bike on the page, by its id in the store. */
  bikeId = $state<string | null>(null);
  bikes = $state.raw<readonly BikeSummary[]>([]);
  status = $state.raw<SaveStatus>({ state: 'saved', revision: null, savedAt: null });
  message = $state.raw<Message | null>(null);
  elsewhere = $state.raw<TabNotice | null>(null);

  constructor(bench: Workbench) {
    this.#bench = bench;
  }

  /** Finds the store, brings back preferences and the last bike, and saves from now on. */
  async begin(): Promise<void> {
    const store = await openStore(browserStore());
    this.#store = store;
    const kept = await store.loadPreferences();
    const stored = readPreferences(kept.ok ? kept.value : null);
    const { lastBike, ...preferences } = stored;
    this.#bench.preferences.change(preferences);
    await this.#listBikes();
    const last = this.bikes.find((bike) => bike.id === lastBike);
    const opened = last !== undefined && (await this.#load(last.id));
    // A bike that was changed before the store answered stays on the page.
    if (!opened) this.#keep(newId(), null);
    saveOnLeaving(() => this.#autosave?.flush() ?? Promise.resolve());
    $effect.root(() => {
      $effect(() => this.#savePreferences());
      $effect(() => this.#change(this.#bench.session.history.present));
    });
    this.#begun = true;
  }

  /** True once the store has answered and changes are being saved. */
  get begun(): boolean {
    return this.#begun;
  }

  /** A copy of a bike becomes a new one of the user's own. */
  async startWith(document: BikeDocument): Promise<void> {
    await this.#leave();
    this.#bench.open(document);
    this.#keep(newId(), null);
    this.message = null;
  }

  async openStored(id: string): Promise<void> {
    if (id === this.bikeId) return;
    await this.#leave();
    await this.#load(id);
  }

  async openFile(file: File): Promise<void> {
    const read = await readBikeFile(file);
    if (!read.ok) {
      this.message = {
        kind: 'error',
        text: `${file.name} was not opened. ${read.reason.sentence}`,
        details: ['The bike on the page is as it was.'],
      };
      return;
    }
    await this.#leave();
    const id = newId();
    const { document, repairs, text } = read.value;
    if (repairs.length > 0) await this.#store?.keepOriginal({ id, keptAt: Date.now(), text });
    this.#bench.open(document);
    this.#keep(id, null);
    this.#autosave?.change(document);
    this.message = openedMessage(file.name, repairs);
  }

  saveFile(): void {
    const name = downloadBike(this.#bench.session.history.present);
    this.message = { kind: 'done', text: `Saved to ${name} among your downloads.`, details: [] };
  }

  dismiss(): void {
    this.message = null;
  }

  /** Opens the version that another tab made of this bike, as a bike of its own; both stay. */
  async openOtherWork(): Promise<void> {
    const { status } = this;
    if (status.state !== 'conflict' || this.#store === null || this.bikeId === null) return;
    const revisions = await this.#store.revisions(this.bikeId);
    const other = revisions.ok && revisions.value.find((each) => each.writer === status.otherWriter);
    if (!other) {
      this.message = {
        kind: 'error',
        text: 'The other version could not be found in the store.',
        details: [],
      };
      return;
    }
    const opened = openDocument(other.text);
    if (!opened.ok) {
      this.message = { kind: 'error', text: opened.reason.sentence, details: [] };
      return;
    }
    await this.startWith(opened.value.document);
    this.#autosave?.change(opened.value.document);
  }

  /** The user has seen that both versions are kept. */
  acknowledge(): void {
    this.#autosave?.acknowledgeConflict();
  }

  /** Takes over what another tab has saved of the bike on the page. */
  async takeSaved(): Promise<void> {
    const id = this.bikeId;
    if (id === null) return;
    await this.#leave();
    await this.#load(id);
  }

  async #load(id: string): Promise<boolean> {
    const store = this.#store;
    if (store === null) return false;
    const loaded = await store.load(id);
    if (!loaded.ok || loaded.value === null) {
      const text = loaded.ok ? 'That bike is no longer in the store.' : loaded.reason.sentence;
      this.message = { kind: 'error', text, details: [] };
      return false;
    }
    const { text, revision, name } = loaded.value;
    const opened = await openStored(store, id, text, Date.now());
    if (!opened.ok) {
      this.message = {
        kind: 'error',
        text: `${name} was not opened. ${opened.reason.sentence}`,
        details: [],
      };
      return false;
    }
    this.#bench.open(opened.value.document);
    this.#keep(id, revision);
    this.message = opened.value.repairs.length > 0 ? openedMessage(name, opened.value.repairs) : null;
    return true;
  }

  #keep(id: string, revision: number | null): void {
    const store = this.#store;
    if (store === null) return;
    this.bikeId = id;
    const writer = newId();
    this.elsewhere = null;
    this.#saved = this.#bench.session.history.present;
    const notices = new TabNotices(browserChannel(), id, writer, (notice) => {
      this.elsewhere = notice;
    });
    this.#notices = notices;
    this.#autosave = new Autosave({
      store,
      id,
      writer,
      revision,
      now: () => Date.now(),
      onStatus: (status) => {
        this.status = status;
      },
      onSaved: (saved, savedAt) => {
        notices.saved(saved, savedAt);
        void this.#listBikes();
      },
    });
    void store.savePreferences({ ...this.#bench.preferences.data, lastBike: id });
  }

  /** The document as it was opened or last given to be saved. */
  #saved: BikeDocument | null = null;

  #change(document: BikeDocument): void {
    if (document === this.#saved) return;
    this.#saved = document;
    this.#autosave?.change(document);
  }

  #savePreferences(): void {
    const { data } = this.#bench.preferences;
    const { bikeId } = this;
    void this.#store?.savePreferences(bikeId === null ? data : { ...data, lastBike: bikeId });
  }

  async #leave(): Promise<void> {
    this.#notices?.close();
    await this.#autosave?.stop();
  }

  async #listBikes(): Promise<void> {
    const listed = await this.#store?.list();
    if (listed?.ok) this.bikes = listed.value;
  }
}

function openedMessage(name: string, repairs: readonly Repair[]): Message {
  if (repairs.length === 0) return { kind: 'done', text: `Opened ${name}.`, details: [] };
  return {
    kind: 'warning',
    text: `Opened ${name}, with ${repairs.length === 1 ? 'one change' : `${repairs.length} changes`}. The original is kept as it was.`,
    details: repairs.map((repair) => repair.sentence),
  };
}
