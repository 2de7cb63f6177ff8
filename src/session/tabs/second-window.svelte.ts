/** A second window for the presenter: open, closed by somebody, or blocked by the browser. */

export interface ShownWindow {
  close(): void;
}

export class SecondWindow {
  readonly #opener: (onclosed: () => void) => ShownWindow | null;
  #shown = $state.raw<ShownWindow | null>(null);
  /** Whether the browser blocked the window when it was last asked for. */
  isBlocked = $state(false);

  readonly isOpen: boolean = $derived(this.#shown !== null);

  /** `opener` opens the window, or gives null where the browser blocks it; it calls back when somebody closes it. */
  constructor(opener: (onclosed: () => void) => ShownWindow | null) {
    this.#opener = opener;
  }

  toggle(): void {
    if (this.#shown !== null) {
      this.close();
      return;
    }
    this.#shown = this.#opener(() => (this.#shown = null));
    this.isBlocked = this.#shown === null;
  }

  close(): void {
    this.#shown?.close();
    this.#shown = null;
  }
}
