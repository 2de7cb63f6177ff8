/** A plotter that keeps everything it gets, for tests of what is laid where. */
import type { Paint, Plotter, Words } from '../../src/scene/plot/plotter.ts';

export interface LaidOutline {
  /** Ends of moves, lines and curves. */
  readonly places: { readonly x: number; readonly y: number }[];
  readonly arcs: {
    readonly x: number;
    readonly y: number;
    readonly radius: number;
    readonly from: number;
    readonly to: number;
  }[];
  readonly paint: Paint;
}

export class PlotLog implements Plotter {
  readonly outlines: LaidOutline[] = [];
  readonly written: Words[] = [];
  #places: LaidOutline['places'] = [];
  #arcs: LaidOutline['arcs'] = [];

  begin(): void {
    this.#places = [];
    this.#arcs = [];
  }

  move(xPx: number, yPx: number): void {
    this.#places.push({ x: xPx, y: yPx });
  }

  line(xPx: number, yPx: number): void {
    this.#places.push({ x: xPx, y: yPx });
  }

  curve(_x1: number, _y1: number, _x2: number, _y2: number, xPx: number, yPx: number): void {
    this.#places.push({ x: xPx, y: yPx });
  }

  arc(xPx: number, yPx: number, radiusPx: number, from: number, to: number): void {
    this.#arcs.push({ x: xPx, y: yPx, radius: radiusPx, from, to });
  }

  close(): void {
    this.#places.push(this.#places[0]);
  }

  paint(paint: Paint): void {
    this.outlines.push({ places: this.#places, arcs: this.#arcs, paint });
  }

  words(words: Words): void {
    this.written.push(words);
  }
}
