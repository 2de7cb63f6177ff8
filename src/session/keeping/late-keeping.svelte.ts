/** Keeping, fetched after the first sight, which shows a bike without it; what is asked of it before then waits. */
import type { Keeping } from './keeping.svelte.ts';

export class LateKeeping {
  readonly #load: () => Promise<Keeping>;
  #waiting: readonly ((keeping: Keeping) => void)[] = [];
  #isLoading = false;

  /** Null while it is on its way or could not be fetched. */
  keeping = $state.raw<Keeping | null>(null);
  /** Whether it could not be fetched; `fetch` tries again. */
  failed = $state(false);

  constructor(load: () => Promise<Keeping>) {
    this.#load = load;
  }

  async fetch(): Promise<void> {
    if (this.#isLoading || this.keeping !== null) return;
    this.#isLoading = true;
    this.failed = false;
    try {
      this.keeping = await this.#load();
    } catch {
      // The browser's words for it differ and tell a person nothing; the page says it in its own.
      this.failed = true;
    }
    this.#isLoading = false;
    if (this.keeping !== null) this.#giveOut(this.keeping);
  }

  /** Does `act` at once, or as soon as keeping is there. */
  ask(act: (keeping: Keeping) => void): void {
    if (this.keeping !== null) {
      act(this.keeping);
      return;
    }
    this.#waiting = [...this.#waiting, act];
    void this.fetch();
  }

  #giveOut(keeping: Keeping): void {
    const waiting = this.#waiting;
    this.#waiting = [];
    for (const act of waiting) act(keeping);
  }
}
