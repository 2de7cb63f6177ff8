/** The bike on the page: its history, and the draft that a drag or a turning adjuster shows before it is committed. */
import { fail, type Result } from '../core/numeric/result.ts';
import type { BikeDocument } from '../document/document.ts';
import type { EditReason } from '../document/edits.ts';
import {
  beforeLast,
  beginHistory,
  commit,
  redo,
  redoLabel,
  undo,
  undoLabel,
  type History,
} from '../document/history.ts';
import { Pace } from './pace.svelte.ts';

/** What is called when the bike on the page changes, whoever changes it. */
export interface BikeListener {
  /** Another document is on the page, also while a hand tries one out. */
  readonly shown?: (document: BikeDocument) => void;
  /** A hand tries something out and has not let go. */
  readonly moved?: () => void;
  /** A change of the history is done, with what was done in words. */
  readonly done?: (act: string) => void;
  /** Another bike has taken the page. */
  readonly opened?: () => void;
}

type Edit = (from: BikeDocument) => Result<BikeDocument, EditReason>;

export class BikeSession {
  history = $state.raw<History>() as History;
  /** What is being tried out; null when nothing is. */
  draft = $state.raw<BikeDocument | null>(null);
  /** Why the last edit was not taken, in words; null once one was. */
  refusal = $state<string | null>(null);

  /** The bike with all that a hand does to it this moment: what is drawn. */
  readonly newest: BikeDocument = $derived(this.draft ?? this.history.present);
  /** Whether something is being tried out: a drag is on, or an adjuster turns. */
  readonly drafting = $derived(this.draft !== null);
  /** How fast all that is not drawn follows a hand. */
  readonly pace = new Pace(() => this.drafting);
  /** The bike on the page; while a hand tries something out, at the pace of figures and words. */
  readonly document: BikeDocument = $derived.by(() => this.pace.of(() => this.newest));
  /**
   * What the present is explained against: the bike before the draft, or before the last committed change. Presses of one
   * adjuster in a row are one change.
   */
  readonly before: BikeDocument | null = $derived(
    this.draft !== null ? this.history.present : beforeLast(this.history),
  );
  readonly canUndo = $derived(this.history.past.length > 0);
  readonly canRedo = $derived(this.history.future.length > 0);
  readonly undoLabel = $derived(undoLabel(this.history));
  readonly redoLabel = $derived(redoLabel(this.history));
  /** What the last change is called. */
  readonly lastLabel = $derived(this.history.past.at(-1)?.label ?? null);

  /** How many bikes the page has opened so far: it tells one bike's history from the next one's. */
  opened = 0;
  readonly #listeners: BikeListener[] = [];

  constructor(document: BikeDocument) {
    this.history = beginHistory(document);
  }

  /** From now on the listener is called; with the present bike at once. */
  listen(listener: BikeListener): void {
    this.#listeners.push(listener);
    listener.shown?.(this.newest);
  }

  #show(): void {
    for (const { shown } of this.#listeners) shown?.(this.newest);
  }

  #turnTo(history: History, act: string): void {
    const isNew = history !== this.history;
    this.history = history;
    this.#show();
    if (!isNew) return;
    for (const { done } of this.#listeners) done?.(act);
  }

  #edit(edit: Edit): Result<BikeDocument, EditReason> {
    const { locked, present } = this.history;
    return locked === undefined ? edit(present) : fail(locked);
  }

  /** Shows an edit made on the committed bike, without an undo entry. */
  preview(edit: Edit): void {
    const edited = this.#edit(edit);
    this.refusal = edited.ok ? null : edited.reason.sentence;
    if (edited.ok) this.draft = edited.value;
    this.#show();
    this.pace.moved();
    for (const { moved } of this.#listeners) moved?.();
  }

  /** Commits an edit made on the committed bike as one undo entry; one that changes nothing leaves none. */
  commit(edit: Edit, label: string): void {
    const edited = this.#edit(edit);
    this.draft = null;
    this.refusal = edited.ok ? null : edited.reason.sentence;
    this.#turnTo(edited.ok ? commit(this.history, edited.value, label) : this.history, label);
  }

  /** Commits what is being shown. */
  commitDraft(label: string): void {
    const { draft } = this;
    this.draft = null;
    this.#turnTo(draft === null ? this.history : commit(this.history, draft, label), label);
  }

  /** Tells why something was not done; the bike stays as it is. */
  refuse(sentence: string): void {
    this.refusal = sentence;
  }

  /** Forgets what is being shown; the committed bike stands as before. */
  cancel(): void {
    this.draft = null;
    this.refusal = null;
    this.#show();
  }

  undo(): void {
    this.cancel();
    this.#turnTo(undo(this.history), `Undo ${this.undoLabel ?? ''}`);
  }

  redo(): void {
    this.cancel();
    this.#turnTo(redo(this.history), `Redo ${this.redoLabel ?? ''}`);
  }

  /** Another bike takes the page, with what can be undone on it. */
  open(history: History): void {
    this.cancel();
    this.history = history;
    this.opened += 1;
    this.#show();
    for (const { opened } of this.#listeners) opened?.();
  }
}
