/** The pace at which figures and words follow a hand: slower than the drawing, which needs the time, and right at once when the hand lets go. */
import { untrack } from 'svelte';

export class Pace {
  /** Least time from one look at the hand to the next, ms; 0 looks at each move. The page sets it. */
  gapMs = 0;
  readonly #isMoving: () => boolean;
  #looks = $state(0);
  #lastMs = -Infinity;
  #timer: ReturnType<typeof setTimeout> | null = null;

  constructor(isMoving: () => boolean) {
    this.#isMoving = isMoving;
  }

  /** What `read` gives; while a hand moves something, as it was at the last look. For a derived value only. */
  of<T>(read: () => T): T {
    if (!this.#isMoving()) return read();
    // Read, so that each look works this out anew.
    void this.#looks;
    return untrack(read);
  }

  /** The hand has moved: looks at once where the last look is long enough ago, otherwise as soon as it is. */
  moved(): void {
    const leftMs = this.#lastMs + this.gapMs - performance.now();
    if (leftMs <= 0) this.#look();
    else this.#timer ??= setTimeout(() => this.#look(), leftMs);
  }

  #look(): void {
    if (this.#timer !== null) clearTimeout(this.#timer);
    this.#timer = null;
    this.#lastMs = performance.now();
    this.#looks += 1;
  }
}
