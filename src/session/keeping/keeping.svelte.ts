/** Keeping bikes: saved by themselves, opened from the browser's store or a file, and what went wrong in words. */
import { untrack } from 'svelte';
import type { Result } from '../../core/numeric/result.ts';
import type { BikeDocument } from '../../document/document.ts';
import { beginHistory, type History } from '../../document/history.ts';
import { holdsSeveralBikes } from '../../storage/file/read-text-file.ts';
import { Autosave } from '../../storage/autosave.ts';
import { downloadBike } from '../../storage/file/bike-file.ts';
import { listed, sameOrNext } from '../../storage/bike-index.ts';
import type { BikeStore, BikeSummary, ListedBike, StoredBike } from '../../storage/bike-store.ts';
import { newId } from '../../storage/new-id.ts';
import type { Persistence } from '../../storage/persistence.ts';
import type { SaveStatus } from '../../storage/save-status.ts';
import type { StorageFault } from '../../storage/storage-fault.ts';
import { withFolders } from '../../storage/file/files-of-folder.ts';
import { readPreferences, type StoredPreferences } from '../../storage/stored-preferences.ts';
import { TabNotices, type TabNotice } from '../../storage/tab-notices.ts';
import {
  doneMessage,
  errorMessage,
  goneMessage,
  stayWords,
  type Message,
} from '../../words/kept/keeping-message.ts';
import { findInFile, findInVersion, findStored, type FoundBike } from './found-bike.ts';
import { browserPlace, type KeepingPlace } from './keeping-place.ts';
import type { Told, Waiting } from './keeping-told.ts';
import { FIRST_PREFERENCES } from '../preferences.svelte.ts';
import { UnreadableRecords } from './unreadable-records.ts';
import { withBikeFiles } from './with-bike-files.ts';
import type { Workbench } from '../workbench.svelte.ts';

export class Keeping {
  readonly #bench: Workbench;
  /** The bike that the page began with. */
  readonly #first: BikeDocument;
  readonly #place: KeepingPlace;
  #store: BikeStore | null = null;
  #autosave: Autosave | null = null;
  #notices: TabNotices | null = null;
  /** This tab's line of work on the bike on the page. */
  #writer = '';
  /** The document as it was opened or last given to be saved; null when the one on the page must be. */
  #saved: BikeDocument | null;
  /** Counts what was asked to take the page: an answer that comes after a newer wish is dropped. */
  #wish = 0;
  readonly #noBikes = new UnreadableRecords();
  /** What can be undone on the bikes that were on the page, by their ids. */
  #histories: Readonly<Record<string, History | undefined>> = {};
  #asked = false;
  #ending: readonly (() => void)[] = [];

  /** The bike on the page, by its id in the store; null until the store has answered. */
  bikeId = $state<string | null>(null);
  bikes = $state.raw<readonly ListedBike[]>([]);
  /** Versions of the bike on the page that other tabs made and that are kept beside it. */
  others = $state.raw<readonly StoredBike[]>([]);
  status = $state.raw<SaveStatus>({ state: 'saved', revision: null, savedAt: null });
  /** Why something beside the bike itself could not be stored or listed; null once it could. */
  fault = $state.raw<StorageFault | null>(null);
  message = $state.raw<Told | null>(null);
  /** Whether the browser keeps what is stored; null until it was asked, after the first save. */
  persistence = $state.raw<Persistence | null>(null);
  /** What lies in the store and is no bike, until it is dismissed. */
  unreadable = $state.raw<Message | null>(null);
  elsewhere = $state.raw<TabNotice | null>(null);
  waiting = $state.raw<Waiting | null>(null);
  /** The bike to come back to: the last one on the page that the store holds. */
  #lastBike = $state<string | null>(null);

  /** `first` is the bike that the page began with: it may have been changed before this class was fetched. */
  constructor(bench: Workbench, first: BikeDocument, place: KeepingPlace = browserPlace()) {
    this.#bench = bench;
    this.#first = first;
    this.#place = place;
    this.#saved = first;
  }

  /**
   * Finds the store, brings back preferences and the last bike, and saves from now on. Whatever the user has done
   * before the store answered stays: a changed or opened bike keeps the page, a chosen preference its value.
   */
  async begin(): Promise<void> {
    const untouched = (): boolean =>
      this.#bench.session.history.present === this.#first && this.#bench.session.draft === null;
    const store = await this.#place.findStore();
    const stored = this.noted(await store.loadPreferences());
    this.#bringBack(readPreferences(stored ?? null));
    this.#store = store;
    await this.#list();
    const last = this.bikes.find(({ id }) => id === this.#lastBike);
    const found = last !== undefined && untouched() ? await this.#find(store, last.id) : null;
    if (found !== null && untouched()) this.#showOrTell(found);
    if (this.#autosave === null) this.#join(newId(), null);
    this.#ending = [
      this.#place.onLeaving(() => this.#autosave?.leave() ?? Promise.resolve()),
      $effect.root(() => {
        $effect(() => {
          const { present } = this.#bench.session.history;
          untrack(() => this.#change(present));
        });
        $effect(() => void this.#savePreferences(this.#preferencesNow()));
      }),
    ];
  }

  /** Saves what is waiting and listens to nothing any more. */
  async end(): Promise<void> {
    this.#ending.forEach((end) => end());
    await this.#leave();
    this.#store?.close();
  }

  /** A copy of a bike becomes a new one of the user's own; it is stored once it is changed, so never where its history is locked. */
  async startWith(document: BikeDocument, history = beginHistory(document)): Promise<void> {
    const found = { history, id: newId(), revision: null, kept: true, message: null };
    await this.#turnTo(async () => found);
  }

  /** Puts a bike of the store on the page. */
  async openStored(id: string): Promise<void> {
    const store = this.#store;
    if (id === this.bikeId || store === null) return;
    await this.#turnTo(() => this.#find(store, id));
  }

  /** Opens a file as a new bike, or says why not. Several files or bikes come into the list, and the page stays. */
  async openFiles(given: readonly File[], folders: readonly FileSystemEntry[] = []): Promise<void> {
    const store = this.#store;
    await this.#turnTo(async () => {
      const files = await withFolders(given, folders);
      if (files.length === 0) return errorMessage('The folder holds no file.');
      if (store !== null && (files.length !== 1 || (await holdsSeveralBikes(files[0])))) {
        const message = await withBikeFiles((file) => file.restoreFiles(store, files));
        await this.refresh();
        return message;
      }
      await this.#autosave?.flush();
      const isHere = (id: string): boolean => id === this.bikeId && this.#autosave?.hasUnsaved === false;
      return await findInFile(files[0], {
        store,
        besides: files.length - 1,
        find: async (within, id) => (isHere(id) ? null : await this.#find(within, id)),
        keep: async (id, text) => {
          if (store !== null) this.noted(await store.keepOriginal({ id, keptAt: this.#place.now(), text }));
        },
      });
    });
  }

  /** Where bikes will be kept. Shown until one is, so also at a new address of the page, which has none of the bikes kept at the old one. */
  get placeWords(): string {
    const begun = this.bikeId !== null && this.#store?.shortLived === null;
    return begun && this.bikes.length === 0 ? stayWords(this.#place.address) : '';
  }

  /** Where bikes are kept; null until it has been found. */
  get store(): BikeStore | null {
    return this.#store;
  }

  /** Stores the bike on the page now, changed or not, so that something can be kept beside it; its id, or null where it could not. */
  async keepNow(): Promise<string | null> {
    const { bikeId } = this;
    const { locked, present } = this.#bench.session.history;
    if (locked !== undefined) this.message = errorMessage(locked.sentence);
    if (bikeId === null || this.#autosave === null || locked !== undefined) return null;
    this.#change(present);
    if (this.#autosave.revision === null && !this.#autosave.hasUnsaved) this.#autosave.change(present);
    await this.#autosave.flush();
    return this.#autosave.hasUnsaved ? null : bikeId;
  }

  saveFile(): void {
    const name = downloadBike(this.#bench.session.history.present);
    this.message = doneMessage(`Saved to ${name} among your downloads.`);
  }

  dismiss(): void {
    this.message = null;
  }

  dismissUnreadable(): void {
    this.unreadable = null;
  }

  /** Opens a version that another tab made of this bike, as a separate bike; both stay. */
  async openOther(writer: string): Promise<void> {
    const other = this.others.find((each) => each.writer === writer);
    if (other === undefined)
      this.message = errorMessage('The other version is no longer saved in this browser.');
    else await this.openVersion(other.text, 'the other version');
  }

  /** Opens a text that is kept beside a bike, as a bike of its own. `what` names it, such as `the other version`. */
  async openVersion(text: string, what: string): Promise<void> {
    await this.#turnTo(async () => findInVersion(text, what));
  }

  /** The user has seen that both versions are kept. */
  acknowledge(): void {
    this.#autosave?.acknowledgeConflict();
  }

  /** Takes over what another tab has saved of the bike on the page, unless changes here were still to be saved. */
  async takeSaved(): Promise<void> {
    const { bikeId } = this;
    const store = this.#store;
    await this.#autosave?.flush();
    if (bikeId === null || store === null || bikeId !== this.bikeId) return;
    this.elsewhere = null;
    // Then the version here is the newest, and the notice of that tells how to open the other one.
    if (this.status.state === 'conflict') return;
    await this.#turnTo(() => this.#find(store, bikeId));
  }

  /** Lets the waiting bike take the page; the changes that could not be stored are lost. */
  leaveAnyway(): void {
    const { waiting } = this;
    this.waiting = null;
    if (waiting !== null) this.#show(waiting.found);
  }

  /** The waiting bike does not take the page. */
  stay(): void {
    this.waiting = null;
  }

  now(): number {
    return this.#place.now();
  }

  /** What could be undone on a bike when it left the page; null for one that was not on it. */
  historyOf(id: string): History | null {
    return this.#histories[id] ?? null;
  }

  remember(id: string, history: History): void {
    this.#histories = { ...this.#histories, [id]: history };
  }

  /** Looks again at what the store holds, as other tabs may have added to it. */
  async refresh(): Promise<void> {
    await this.#list();
  }

  async #turnTo(find: () => Promise<FoundBike | Message>): Promise<void> {
    const wish = ++this.#wish;
    this.waiting = null;
    const found = await find();
    if (wish !== this.#wish) return;
    if (!('history' in found)) {
      this.message = found;
      return;
    }
    await this.#autosave?.flush();
    if (wish !== this.#wish) return;
    if (this.#autosave?.hasUnsaved)
      this.waiting = { name: this.#bench.session.history.present.bike.name, found };
    else this.#show(found);
  }

  #find(store: BikeStore, id: string): Promise<FoundBike | Message> {
    return findStored(store, id, this.#place.now(), (each) => this.historyOf(each));
  }

  #showOrTell(found: FoundBike | Message): void {
    if ('history' in found) this.#show(found);
    else this.message = found;
  }

  #show({ history, id, revision, kept, message }: FoundBike): void {
    if (this.bikeId !== null) this.remember(this.bikeId, this.#bench.session.history);
    // An edit made since the last flush is saved under its own bike while the next one is already here.
    void this.#leave();
    this.#bench.open(history);
    this.#saved = kept ? history.present : null;
    this.message = message;
    this.#join(id, revision);
  }

  async #leave(): Promise<void> {
    const notices = this.#notices;
    await this.#autosave?.stop();
    notices?.close();
  }

  /** Ties the bike on the page to a place in the store. Without a store yet, `begin` does it. */
  #join(id: string, revision: number | null): void {
    const store = this.#store;
    if (store === null) return;
    const writer = newId();
    this.#writer = writer;
    this.bikeId = id;
    this.elsewhere = null;
    this.others = [];
    if (revision !== null) this.#lastBike = id;
    // A bike that has left the page may still be saving.
    const onPage = (): boolean => this.#writer === writer;
    const notices = new TabNotices(this.#place.channel(), id, writer, (notice) => {
      if (onPage()) this.#hear(notice);
    });
    this.#notices = notices;
    this.#autosave = new Autosave({
      store,
      id,
      writer,
      revision,
      now: this.#place.now,
      onStatus: (status) => {
        if (onPage()) this.status = status;
      },
      onSaved: (saved, savedAt, name) => {
        notices.saved(saved, savedAt);
        this.#listSaved({ id, name, revision: saved, writer, savedAt });
        if (!onPage()) return;
        this.#lastBike = id;
        void this.#listOthers();
        void this.#askToPersist();
      },
      onUnreadable: () => void this.refresh(),
      onGone: () => {
        if (onPage()) this.message = goneMessage();
        void this.refresh();
      },
    });
    void this.#listOthers();
  }

  async #askToPersist(): Promise<void> {
    if (this.#asked || this.#store?.shortLived !== null) return;
    this.#asked = true;
    this.persistence = await this.#place.persist();
  }

  #hear(notice: TabNotice): void {
    if (notice.kind !== 'leftElsewhere') this.elsewhere = notice;
    else if (this.elsewhere?.kind === 'openElsewhere') this.elsewhere = null;
  }

  #change(document: BikeDocument): void {
    if (document === this.#saved) return;
    // The message about an opened bike stays while that bike is being stored.
    if (this.#saved !== null && this.message?.kind === 'done') this.message = null;
    this.#saved = document;
    this.#autosave?.change(document);
  }

  #bringBack({ lastBike, ...stored }: StoredPreferences): void {
    const { preferences } = this.#bench;
    const first: Readonly<Record<string, unknown>> = { ...FIRST_PREFERENCES };
    const chosen = Object.entries(preferences.data).filter(([key, value]) => value !== first[key]);
    preferences.change({ ...stored, ...Object.fromEntries(chosen) });
    this.#lastBike = lastBike ?? null;
  }

  #preferencesNow(): object {
    const { data } = this.#bench.preferences;
    return this.#lastBike === null ? data : { ...data, lastBike: this.#lastBike };
  }

  async #savePreferences(now: object): Promise<void> {
    if (this.#store !== null) this.noted(await this.#store.savePreferences(now));
  }

  async #list(): Promise<void> {
    const store = this.#store;
    if (store === null) return;
    const shelf = this.noted(await store.list());
    if (shelf !== null) {
      this.bikes = sameOrNext(this.bikes, shelf.bikes);
      this.unreadable = this.#noBikes.tell(shelf.unreadable, this.unreadable);
    }
    await this.#listOthers();
  }

  /** A bike that was saved goes to the head of the list, which is not read anew for it. */
  #listSaved(saved: BikeSummary): void {
    const before = this.bikes.find(({ id }) => id === saved.id) ?? null;
    this.bikes = [listed(saved, before), ...this.bikes.filter(({ id }) => id !== saved.id)];
  }

  async #listOthers(): Promise<void> {
    const { bikeId } = this;
    if (bikeId === null || this.#store === null) return;
    const others = this.noted(await this.#store.revisions(bikeId));
    if (others !== null && bikeId === this.bikeId) this.others = others;
  }

  /** What the store answered; null when it failed, which the page then says. */
  noted<T>(answer: Result<T, StorageFault>): T | null {
    this.fault = answer.ok ? null : answer.reason;
    return answer.ok ? answer.value : null;
  }
}
