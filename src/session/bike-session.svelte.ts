/** The bike on the page: its history, and the draft that a drag or a turning adjuster shows before it is committed. */
import type { Result } from '../core/numeric/result.ts';
import type { BikeDocument } from '../document/document.ts';
import type { EditReason } from '../document/edits.ts';
import { beginHistory, commit, redo, redoLabel, undo, undoLabel, type History } from '../document/history.ts';

export class BikeSession {
  history = $state.raw<History>() as History;
  /** What is being tried out; null when nothing is. */
  draft = $state.raw<BikeDocument | null>(null);
  /** Why the last edit was not taken, in words; null once one was. */
  refusal = $state<string | null>(null);

  readonly document: BikeDocument = $derived(this.draft ?? this.history.present);
  /** What the present is explained against: the bike before the draft, or before the last committed change. */
  readonly before: BikeDocument | null = $derived(
    this.draft !== null ? this.history.present : (this.history.past.at(-1)?.document ?? null),
  );
  readonly canUndo = $derived(this.history.past.length > 0);
  readonly canRedo = $derived(this.history.future.length > 0);
  readonly undoLabel = $derived(undoLabel(this.history));
  readonly redoLabel = $derived(redoLabel(this.history));
  /** What the last change is called. */
  readonly lastLabel = $derived(this.history.past.at(-1)?.label ?? null);

  /** How many bikes have been opened since the page was: tells one bike's history from the next one's. */
  opened = 0;
  #settled: (document: BikeDocument) => void = () => undefined;
  #done: (act: string) => void = () => undefined;

  constructor(document: BikeDocument) {
    this.history = beginHistory(document);
  }

  /** Tells of every document that is shown from now on, and of the present one. */
  whenSettled(settled: (document: BikeDocument) => void): void {
    this.#settled = settled;
    this.#settle();
  }

  /** Calls `done` after each change of the history from now on, with what was done in words. */
  whenDone(done: (act: string) => void): void {
    this.#done = done;
  }

  #settle(): void {
    this.#settled(this.document);
  }

  /** Shows an edit made on the committed bike, without an undo entry. */
  preview(edit: (from: BikeDocument) => Result<BikeDocument, EditReason>): void {
    const edited = edit(this.history.present);
    this.refusal = edited.ok ? null : edited.reason.sentence;
    if (edited.ok) this.draft = edited.value;
    this.#settle();
  }

  /** Commits an edit made on the committed bike as one undo entry; one that changes nothing leaves none. */
  commit(edit: (from: BikeDocument) => Result<BikeDocument, EditReason>, label: string): void {
    const edited = edit(this.history.present);
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
    this.#settle();
  }

  undo(): void {
    this.cancel();
    this.#turnTo(undo(this.history), `Undo ${this.undoLabel ?? ''}`);
  }

  redo(): void {
    this.cancel();
    this.#turnTo(redo(this.history), `Redo ${this.redoLabel ?? ''}`);
  }

  #turnTo(history: History, act: string): void {
    const isNew = history !== this.history;
    this.history = history;
    this.#settle();
    if (isNew) this.#done(act);
  }

  /** Another bike takes the page, with a history of its own. */
  open(document: BikeDocument): void {
    this.cancel();
    this.history = beginHistory(document);
    this.opened += 1;
    this.#settle();
  }
}
