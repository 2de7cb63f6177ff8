/** A value on its way: previewed while a key, button or pointer is held, committed once or taken back. */

export interface DraftListener {
  readonly onpreview: (value: number) => void;
  readonly oncommit: (value: number) => void;
  readonly oncancel: () => void;
}

/** One hold is one undo: any number of `move`s end in a single commit, or in none when nothing changed. */
export class ValueDraft {
  /** The value under way; null while nothing is held. */
  current = $state<number | null>(null);
  #start = 0;
  readonly #listener: DraftListener;

  constructor(listener: DraftListener) {
    this.#listener = listener;
  }

  /** Goes to `next`. `before` is the committed value, remembered by the first move of a hold. */
  move(before: number, next: number): void {
    if (this.current === null) {
      if (next === before) return;
      this.#start = before;
    }
    if (next === this.current) return;
    this.current = next;
    this.#listener.onpreview(next);
  }

  commit(): void {
    const last = this.current;
    if (last === null) return;
    this.current = null;
    if (last === this.#start) this.#listener.oncancel();
    else this.#listener.oncommit(last);
  }

  /** Takes the value back to where the hold began; true when there was something to take back. */
  cancel(): boolean {
    if (this.current === null) return false;
    this.current = null;
    this.#listener.oncancel();
    return true;
  }
}
