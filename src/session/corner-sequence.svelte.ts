/** Takes the bike from braking through the corner to its exit: by a slider, or played once. */
import { CORNER_PLACES } from '../core/riding/states/corner-sequence.ts';
import type { Announcer } from './announcer.svelte.ts';
import type { Moving } from './moving.svelte.ts';
import type { Standing } from './standing.svelte.ts';

/** How long the whole way takes when it is played, ms. */
export const ROLL_MS = 4000;

/** What calls back once for the next picture, with the time in ms; the browser's own on the page. */
export interface Frames {
  ask(frame: (nowMs: number) => void): number;
  cancel(id: number): void;
}

const BROWSER_FRAMES: Frames = {
  ask: (frame) => requestAnimationFrame(frame),
  cancel: (id) => cancelAnimationFrame(id),
};

export class CornerSequence {
  readonly #standing: Standing;
  readonly #moving: Moving;
  readonly #announcer: Announcer;
  readonly #frames: Frames;
  #frame: number | null = null;
  /** Where a hand took the slider from: the part, or null for the state before; undefined while none holds it. */
  #heldFrom: number | null | undefined;
  playing = $state(false);

  constructor(standing: Standing, moving: Moving, announcer: Announcer, frames: Frames = BROWSER_FRAMES) {
    this.#standing = standing;
    this.#moving = moving;
    this.#announcer = announcer;
    this.#frames = frames;
  }

  /** Reads the bike at a part of the corner sequence, 0 to 1, by hand. */
  scrub(part: number, nowMs: number): void {
    this.stop();
    this.#moving.restore();
    if (this.#heldFrom === undefined) this.#heldFrom = this.#standing.cornerPart;
    this.#go(part, nowMs);
  }

  /** Puts the bike back to where the hand took the slider from; true when a hand held it. */
  cancel(): boolean {
    const from = this.#heldFrom;
    this.#heldFrom = undefined;
    if (from === undefined) return false;
    this.#standing.scrub(from);
    return true;
  }

  /** The hand lets go: what changed is said. */
  release(nowMs: number): void {
    if (this.#heldFrom === undefined) return;
    this.#heldFrom = undefined;
    this.#announcer.settled(nowMs);
  }

  /** Plays the whole way once; `inSteps`, for those who want no motion, shows the named places one after another. */
  play(inSteps: boolean): void {
    this.stop();
    this.#moving.restore();
    this.playing = true;
    let began: number | null = null;
    const frame = (nowMs: number): void => {
      this.#frame = null;
      if (this.#moving.held !== null) {
        // A hand that takes hold of the bike wants it to stay where it is.
        this.stop();
        return;
      }
      began ??= nowMs;
      const passed = Math.min(1, (nowMs - began) / ROLL_MS);
      const part = inSteps ? placeAt(passed) : passed;
      if (part !== this.#standing.cornerPart) this.#go(part, nowMs);
      if (passed < 1) this.#frame = this.#frames.ask(frame);
      else {
        this.playing = false;
        this.#announcer.settled(nowMs);
      }
    };
    this.#frame = this.#frames.ask(frame);
  }

  /** Stops playing where it is. */
  stop(): void {
    if (this.#frame !== null) this.#frames.cancel(this.#frame);
    this.#frame = null;
    this.playing = false;
  }

  /** Ends the corner sequence: the bike is read in the state it was in before. */
  end(nowMs: number): void {
    this.stop();
    if (this.#standing.cornerPart === null) return;
    this.#moving.restore();
    this.#standing.scrub(null);
    this.#announcer.settled(nowMs);
  }

  #go(part: number, nowMs: number): void {
    this.#standing.scrub(part);
    this.#announcer.moved(nowMs);
  }
}

/** The named place that is shown while a part of the time has passed: each for its share. */
function placeAt(passed: number): number {
  const last = CORNER_PLACES.length - 1;
  return CORNER_PLACES[Math.min(last, Math.floor(passed * CORNER_PLACES.length))].part;
}
