/** Reading a dimension: two taps, each on a point of the bike or anywhere on the side view. */
import type { Point } from '../core/plane/point.ts';
import { toGround } from '../scene/shapes/view.ts';
import type { Drawing } from './drawing.svelte.ts';
import type { Handles } from './handles.svelte.ts';
import type { SideView } from './side-view.svelte.ts';

/** A dimension keeps to a point of the bike by its handle, so that it follows when the bike moves. */
type End = { readonly handle: string } | { readonly place: Point };

export class Measuring {
  readonly #handles: Handles;
  readonly #view: SideView;
  #first = $state.raw<End | null>(null);
  #second = $state.raw<End | null>(null);
  /** Whether the first end waits for the second. */
  readonly waiting = $derived(this.#first !== null && this.#second === null);
  readonly measured = $derived.by(() => {
    const from = this.#placeOf(this.#first);
    const to = this.#placeOf(this.#second);
    return from === null || to === null ? null : { from, to };
  });

  constructor(drawing: Drawing, handles: Handles, view: SideView) {
    this.#handles = handles;
    this.#view = view;
    drawing.measured = () => this.measured;
  }

  /** Takes a point of the bike, by the id of its handle, as the next end. */
  tapPoint(handle: string): void {
    this.#tap({ handle });
  }

  tapPlace(xPx: number, yPx: number): void {
    this.#tap({ place: toGround(this.#view.view, { x: xPx, y: yPx }) });
  }

  clear(): void {
    this.#first = null;
    this.#second = null;
  }

  #tap(end: End): void {
    if (this.waiting) this.#second = end;
    else {
      this.#first = end;
      this.#second = null;
    }
  }

  #placeOf(end: End | null): Point | null {
    if (end === null) return null;
    if ('place' in end) return end.place;
    return this.#handles.all.find((handle) => handle.id === end.handle)?.place ?? null;
  }
}
