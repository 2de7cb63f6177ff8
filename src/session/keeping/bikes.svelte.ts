/** The bikes as their list and cards show them, and what can be done with them, each act with a way back. */
import { tick } from 'svelte';
import { succeed } from '../../core/numeric/result.ts';
import type { BikeDocument } from '../../document/document.ts';
import { renameBike, setNamedBaseline } from '../../document/edits.ts';
import { FIRST_DEMO } from '../../document/demos/first-demo.ts';
import { beginHistory, commit, type History } from '../../document/history.ts';
import { openDocument } from '../../document/open-document.ts';
import { saveDocument } from '../../document/save-document.ts';
import { listed } from '../../storage/bike-index.ts';
import type {
  BikeCard,
  BikeStore,
  KeptPicture,
  ListedBike,
  Original,
  StoredBike,
} from '../../storage/bike-store.ts';
import { canDecode } from '../../storage/file/can-decode.ts';
import { newId } from '../../storage/new-id.ts';
import { doneMessage, errorMessage } from '../../words/kept/keeping-message.ts';
import { bikesInOrder, bikesWith, type BikeOrder } from './bike-search.ts';
import { freeName } from './free-name.ts';
import type { Keeping } from './keeping.svelte.ts';
import type { Workbench } from '../workbench.svelte.ts';

/** A bike of the list; the one on the page may not be stored yet. */
export interface BikeRow extends ListedBike {
  readonly onPage: boolean;
  readonly stored: boolean;
}

/** What lies beside a bike. */
interface Beside {
  readonly id: string;
  readonly pictures: readonly KeptPicture[];
  /** Versions that other tabs made, the latest first. */
  readonly versions: readonly StoredBike[];
  /** Texts as they were before a repair. */
  readonly originals: readonly Original[];
}

/** An act that can be taken back. */
interface Act {
  readonly label: string;
  readonly undo: () => Promise<void>;
}

export class Bikes {
  readonly #bench: Workbench;
  readonly #keeping: Keeping;
  readonly #decodes: (file: Blob) => Promise<boolean>;
  /** What can be taken back, the oldest first. */
  #acts = $state.raw<readonly Act[]>([]);

  search = $state('');
  order = $state<BikeOrder>('lastWorkedOn');
  withArchived = $state(false);
  /** What lies beside the bike whose card is open; null with no card open. */
  beside = $state.raw<Beside | null>(null);

  readonly #name: string = $derived.by(() => this.#bench.session.document.bike.name);
  /** Every bike, the one on the page under its present name. */
  readonly all: readonly BikeRow[] = $derived.by(() => {
    const { bikeId, bikes } = this.#keeping;
    const rows = bikes.map((bike) => {
      const onPage = bike.id === bikeId;
      return { ...bike, name: onPage ? this.#name : bike.name, onPage, stored: true };
    });
    if (bikeId === null || rows.some(({ onPage }) => onPage)) return rows;
    const unsaved = { id: bikeId, name: this.#name, revision: 0, writer: '', savedAt: Infinity };
    return [{ ...listed(unsaved, null), onPage: true, stored: false }, ...rows];
  });
  readonly #ordered = $derived.by(() => bikesInOrder(this.all, this.order, this.withArchived));
  readonly shown: readonly BikeRow[] = $derived.by(() => bikesWith(this.#ordered, this.search));
  /** The bike whose card is open; null with none open, or once it is gone. */
  readonly open: BikeRow | null = $derived.by(
    () => this.all.find(({ id }) => id === this.beside?.id) ?? null,
  );
  /** What can be taken back next; null when nothing. */
  readonly undoLabel: string | null = $derived.by(() => this.#acts.at(-1)?.label ?? null);

  /** `decodes` says whether a file can be shown as a picture. */
  constructor(bench: Workbench, keeping: Keeping, decodes: (file: Blob) => Promise<boolean> = canDecode) {
    this.#bench = bench;
    this.#keeping = keeping;
    this.#decodes = decodes;
  }

  #row(id: string): BikeRow | null {
    return this.all.find((each) => each.id === id) ?? null;
  }

  /** Puts a bike on the page and says whether it is there now: changes that cannot be stored hold the page. */
  async choose(id: string): Promise<boolean> {
    await this.#keeping.openStored(id);
    return this.#keeping.bikeId === id;
  }

  /** A copy of a demonstration becomes a new bike on the page; it is stored once it is changed. */
  async startWith(demo: BikeDocument): Promise<boolean> {
    return await this.#begin(`New bike: ${demo.bike.name}`, () => this.#keeping.startWith(demo));
  }

  /** Opens a version or an original as a bike of its own; `what` names it, such as `the other version`. */
  async openVersion(text: string, what: string): Promise<boolean> {
    return await this.#begin('New bike from a version', () => this.#keeping.openVersion(text, what));
  }

  /** The way back from a new bike is to the one before; if the new one was stored by then, it is deleted. */
  async #begin(label: string, start: () => Promise<void>): Promise<boolean> {
    const { bikeId: before } = this.#keeping;
    const left = this.#bench.session.history.present;
    await start();
    const { bikeId: id } = this.#keeping;
    if (id === null || id === before) return false;
    this.#remember(label, async () => {
      if (this.#row(id)?.stored === true) await this.remove(id);
      if (this.#keeping.bikeId !== before)
        await (before !== null && this.#row(before)?.stored === true
          ? this.#keeping.openStored(before)
          : this.#keeping.startWith(left));
    });
    return true;
  }

  async duplicate(id: string): Promise<void> {
    const row = this.#row(id);
    const { store } = this.#keeping;
    if (row === null || store === null) return;
    const document = await this.#documentOf(store, row);
    if (document === null) return;
    const names = this.all.map(({ name }) => name);
    const named = renameBike(document, freeName(row.name, names));
    if (!named.ok) return this.#tell(`${row.name} was not duplicated. ${named.reason.sentence}`);
    const copy = newId();
    const pictures = this.#keeping.noted(await store.pictures(id));
    if (pictures === null) return;
    const savedAt = this.#keeping.now();
    const bike = { id: copy, name: named.value.bike.name, revision: 1, writer: newId(), savedAt };
    // In one go, so that no copy lacks its card or some of its pictures.
    const put = await store.putBack({
      bike: { ...bike, text: saveDocument(named.value) },
      card: { ...row.card, archived: false },
      sheets: [],
      revisions: [],
      originals: [],
      pictures: pictures.map((picture) => ({ ...picture, id: newId(), bikeId: copy })),
    });
    this.#keeping.noted(put);
    if (!put.ok) return;
    await this.#keeping.refresh();
    this.#done(`Duplicated ${row.name}.`, () => this.remove(copy));
  }

  async rename(id: string, name: string): Promise<void> {
    const row = this.#row(id);
    const { store } = this.#keeping;
    if (row === null || store === null || name.trim() === row.name) return;
    const undo = row.onPage ? await this.#renameOnPage(name) : await this.#renameStored(store, row, name);
    if (undo !== null) this.#done(`Renamed ${row.name}.`, undo);
  }

  async #renameOnPage(name: string): Promise<(() => Promise<void>) | null> {
    const { session } = this.#bench;
    const { history: before } = session;
    const { bikeId } = this.#keeping;
    session.commit((from) => renameBike(from, name), 'Renamed the bike');
    if (session.history === before) {
      this.#tell(session.refusal ?? 'The bike was not renamed.');
      return null;
    }
    const { history: after } = session;
    // The change is noticed first: it takes away what was said before it.
    await tick();
    return async () => {
      if (session.history === after) session.undo();
      else if (bikeId !== null) await this.rename(bikeId, before.present.bike.name);
      await tick();
    };
  }

  async #renameStored(store: BikeStore, row: BikeRow, name: string): Promise<(() => Promise<void>) | null> {
    const document = await this.#documentOf(store, row);
    if (document === null) return null;
    const renamed = renameBike(document, name);
    if (!renamed.ok) {
      this.#tell(renamed.reason.sentence);
      return null;
    }
    const history = this.#historyOf(row.id, document);
    if (!(await this.#save(store, row.id, renamed.value, row.revision))) return null;
    this.#keeping.remember(row.id, commit(history, renamed.value, 'Renamed the bike'));
    await this.#keeping.refresh();
    return () => this.rename(row.id, document.bike.name);
  }

  /** What can be undone on a stored bike, if it was on the page and has stayed as it was there. */
  #historyOf(id: string, document: BikeDocument): History {
    const before = this.#keeping.historyOf(id);
    const same = before !== null && saveDocument(before.present) === saveDocument(document);
    return same ? before : beginHistory(document);
  }

  async archive(id: string, archived: boolean): Promise<void> {
    const name = this.#row(id)?.name ?? '';
    await this.#changeCard(
      id,
      { archived },
      archived ? `Archived ${name}.` : `${name} is among the bikes again.`,
    );
  }

  /** Notes owner, tags or notes of a bike. */
  async note(id: string, card: Partial<Omit<BikeCard, 'archived'>>): Promise<void> {
    const [what] = Object.keys(card);
    await this.#changeCard(id, card, `Changed the ${what} of ${this.#row(id)?.name ?? ''}.`);
  }

  async #changeCard(id: string, change: Partial<BikeCard>, label: string): Promise<void> {
    const before = this.#row(id)?.card;
    if (before === undefined) return;
    const card = { ...before, ...change };
    if (JSON.stringify(card) === JSON.stringify(before)) return;
    const take = async (next: BikeCard): Promise<boolean> => {
      const { store } = this.#keeping;
      if (store === null || !(await this.#stored(id))) return false;
      const taken = await store.saveCard(id, next);
      this.#keeping.noted(taken);
      await this.#keeping.refresh();
      return taken.ok;
    };
    if (await take(card)) this.#done(label, async () => void (await take(before)));
  }

  /** Deletes a bike with all that lies beside it; another bike takes the page if it was there. */
  async remove(id: string): Promise<void> {
    const row = this.#row(id);
    const { store } = this.#keeping;
    if (row === null || store === null || !row.stored) return;
    if (row.onPage) {
      const next = this.#keeping.bikes.find((each) => each.id !== id && !each.card.archived);
      await (next === undefined ? this.#keeping.startWith(FIRST_DEMO) : this.#keeping.openStored(next.id));
      // Changes that could not be stored hold the page, which asks about them.
      if (this.#keeping.bikeId === id) return;
    }
    const removed = await store.remove(id);
    const whole = this.#keeping.noted(removed);
    await this.#keeping.refresh();
    if (whole === null) return;
    this.#done(`Deleted ${row.name}.`, async () => {
      this.#keeping.noted(await store.putBack(whole));
      await this.#keeping.refresh();
      if (row.onPage) await this.#keeping.openStored(id);
    });
  }

  /** Opens the card of a bike; null closes it. */
  async show(id: string | null): Promise<void> {
    const { store } = this.#keeping;
    if (id === null || store === null) {
      this.beside = null;
      return;
    }
    const [pictures, versions, originals] = await Promise.all([
      store.pictures(id),
      store.revisions(id),
      store.originals(id),
    ]);
    this.beside = {
      id,
      pictures: this.#keeping.noted(pictures) ?? [],
      versions: this.#keeping.noted(versions) ?? [],
      originals: this.#keeping.noted(originals) ?? [],
    };
  }

  async #showAgain(id: string): Promise<void> {
    if (this.beside?.id === id) await this.show(id);
  }

  /** Keeps a picture of the bike as the file is; one that the browser cannot show is refused. */
  async addPicture(id: string, file: File): Promise<void> {
    if (!(await this.#decodes(file)))
      return this.#tell(`${file.name} was not kept. This browser cannot show it as a picture.`);
    if (!(await this.#stored(id))) return;
    const picture = { id: newId(), bikeId: id, keptAt: this.#keeping.now(), blob: file };
    await this.#keepAside(id, `Added the picture ${file.name}.`, {
      take: (store) => store.keepPicture(picture),
      back: (store) => store.removePicture(picture.id),
    });
  }

  async removePicture(picture: KeptPicture): Promise<void> {
    await this.#keepAside(picture.bikeId, 'Removed the picture.', {
      take: (store) => store.removePicture(picture.id),
      back: (store) => store.keepPicture(picture),
    });
  }

  async removeVersion(version: StoredBike): Promise<void> {
    await this.#keepAside(version.id, 'Removed the other version.', {
      take: (store) => store.removeRevision(version.id, version.writer),
      back: (store) => store.keepRevision(version),
    });
  }

  async removeOriginal(original: Original): Promise<void> {
    await this.#keepAside(original.id, 'Removed the text from before the repair.', {
      take: (store) => store.removeOriginal(original.id, original.keptAt),
      back: (store) => store.keepOriginal(original),
    });
  }

  /** Makes a version the baseline of the bike on the page, named `what`: shadow and changes then compare the two. */
  compare(text: string, what: string): boolean {
    const opened = openDocument(text);
    if (!opened.ok) {
      this.#tell(`The version was not opened. ${opened.reason.sentence}`);
      return false;
    }
    this.#bench.session.commit(
      (from) => succeed(setNamedBaseline(from, opened.value.document, what)),
      'Other version as baseline',
    );
    return true;
  }

  /** Takes back the last act. */
  async undo(): Promise<void> {
    const act = this.#acts.at(-1);
    if (act === undefined) return;
    this.#acts = this.#acts.slice(0, -1);
    this.#keeping.message = null;
    await act.undo();
    if (this.#keeping.message === null) this.#keeping.message = doneMessage(`Undone: ${act.label}`);
  }

  async #keepAside(
    id: string,
    label: string,
    {
      take,
      back,
    }: Readonly<Record<'take' | 'back', (store: BikeStore) => ReturnType<BikeStore['removePicture']>>>,
  ): Promise<void> {
    const { store } = this.#keeping;
    if (store === null) return;
    const taken = await take(store);
    this.#keeping.noted(taken);
    await this.#showAgain(id);
    if (!taken.ok) return;
    this.#done(label, async () => {
      this.#keeping.noted(await back(store));
      await this.#showAgain(id);
    });
  }

  /** Whether the store holds the bike; the one on the page is stored for it. */
  async #stored(id: string): Promise<boolean> {
    if (this.#row(id)?.stored === true) return true;
    return id === this.#keeping.bikeId && (await this.#keeping.keepNow()) === id;
  }

  /** The document of a bike as it is now; null where it cannot be opened, which the page then says. */
  async #documentOf(store: BikeStore, row: BikeRow): Promise<BikeDocument | null> {
    if (row.onPage) return this.#bench.session.history.present;
    const loaded = this.#keeping.noted(await store.load(row.id));
    if (loaded === null) return null;
    const opened = openDocument(loaded.text);
    if (opened.ok) return opened.value.document;
    this.#tell(`${row.name} was not opened. ${opened.reason.sentence}`);
    return null;
  }

  async #save(store: BikeStore, id: string, document: BikeDocument, known: number | null): Promise<boolean> {
    const { name } = document.bike;
    const savedAt = this.#keeping.now();
    const text = saveDocument(document);
    const saved = await store.save({ id, name, writer: newId(), savedAt, text, known });
    this.#keeping.noted(saved);
    return saved.ok;
  }

  #remember(label: string, undo: () => Promise<void>): void {
    this.#acts = [...this.#acts, { label, undo }];
  }

  #done(label: string, undo: () => Promise<void>): void {
    this.#remember(label, undo);
    const actions = [{ label: 'Undo', onclick: () => void this.undo() }];
    this.#keeping.message = { ...doneMessage(label), actions };
  }

  #tell(sentence: string): void {
    this.#keeping.message = errorMessage(sentence);
  }
}
