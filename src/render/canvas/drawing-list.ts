/** A drawing as numbers and words in one row, which another thread takes over without a copy and paints. */
import type { Paint, PlotLayer, Plotter, Words } from '../../scene/plot/plotter.ts';
import type { Scene } from '../../scene/shapes/shape.ts';
import type { Theme } from '../../scene/shapes/theme.ts';
import type { View } from '../../scene/shapes/view.ts';

/** What is to be seen, and from where. */
export interface Drawn {
  readonly scene: Scene;
  readonly view: View;
  readonly theme: Theme;
}

export interface DrawingList {
  /** Each step's number, followed by what it takes. */
  readonly numbers: Float64Array<ArrayBuffer>;
  /** Colours and words, which the steps name by their place here. */
  readonly texts: readonly string[];
}

/** What a step does, and what follows its number: px of the screen and radians as in `Plotter`, texts by their place. */
export const STEP = {
  /** ink */
  layer: 0,
  begin: 1,
  /** x, y */
  move: 2,
  /** x, y */
  line: 3,
  /** x1, y1, x2, y2, x, y */
  curve: 4,
  /** x, y, radius, from, to */
  arc: 5,
  close: 6,
  /** fill, even-odd or not, stroke, width, round ends or not, how many dashes, each dash */
  paint: 7,
  /** text, x, y, size, bold or not, colour */
  words: 8,
} as const;

/** Stands for a fill or a stroke that is not there. */
export const NO_COLOUR = -1;

/** Room for a drawing of usual size; a larger one doubles it. */
const FIRST_ROOM = 8192;
/** The most numbers of one step, dashes left out. */
const LONGEST_STEP = 8;

/** Kept from one drawing to the next; only a copy of what was written, up to `end`, is handed out. */
let room = new Float64Array(FIRST_ROOM);
let end = 0;

/** Each step is written number by number: this runs for some thousand of them in every frame of a drag. */
class ListPlotter implements Plotter {
  readonly texts: string[] = [];
  readonly #places = new Map<string, number>();

  constructor() {
    end = 0;
  }

  layer(ink: number): void {
    this.#begin(STEP.layer);
    room[end++] = ink;
  }

  begin(): void {
    this.#begin(STEP.begin);
  }

  move(xPx: number, yPx: number): void {
    this.#begin(STEP.move);
    room[end++] = xPx;
    room[end++] = yPx;
  }

  line(xPx: number, yPx: number): void {
    this.#begin(STEP.line);
    room[end++] = xPx;
    room[end++] = yPx;
  }

  curve(x1Px: number, y1Px: number, x2Px: number, y2Px: number, xPx: number, yPx: number): void {
    this.#begin(STEP.curve);
    room[end++] = x1Px;
    room[end++] = y1Px;
    room[end++] = x2Px;
    room[end++] = y2Px;
    room[end++] = xPx;
    room[end++] = yPx;
  }

  arc(xPx: number, yPx: number, radiusPx: number, from: number, to: number): void {
    this.#begin(STEP.arc);
    room[end++] = xPx;
    room[end++] = yPx;
    room[end++] = radiusPx;
    room[end++] = from;
    room[end++] = to;
  }

  close(): void {
    this.#begin(STEP.close);
  }

  paint({ fill, fillRule, stroke, widthPx, dashPx, ends }: Paint): void {
    this.#begin(STEP.paint);
    room[end++] = this.#place(fill);
    room[end++] = fillRule === 'evenOdd' ? 1 : 0;
    room[end++] = this.#place(stroke);
    room[end++] = widthPx;
    room[end++] = ends === 'round' ? 1 : 0;
    room[end++] = dashPx.length;
    for (const dash of dashPx) {
      this.#makeRoom();
      room[end++] = dash;
    }
  }

  words({ text, xPx, yPx, sizePx, bold, colour }: Words): void {
    this.#begin(STEP.words);
    room[end++] = this.#place(text);
    room[end++] = xPx;
    room[end++] = yPx;
    room[end++] = sizePx;
    room[end++] = bold ? 1 : 0;
    room[end++] = this.#place(colour);
  }

  written(): Float64Array<ArrayBuffer> {
    return room.slice(0, end);
  }

  #begin(step: number): void {
    this.#makeRoom();
    room[end++] = step;
  }

  #makeRoom(): void {
    if (end + LONGEST_STEP <= room.length) return;
    const larger = new Float64Array(2 * room.length);
    larger.set(room);
    room = larger;
  }

  #place(text: string | null): number {
    if (text === null) return NO_COLOUR;
    const known = this.#places.get(text);
    if (known !== undefined) return known;
    const place = this.texts.push(text) - 1;
    this.#places.set(text, place);
    return place;
  }
}

/** The drawing's steps from back to front. */
export function drawingList({ scene, view, theme }: Drawn, plotLayer: PlotLayer): DrawingList {
  const plotter = new ListPlotter();
  for (const layer of scene) {
    if (layer.shapes.length === 0) continue;
    plotter.layer(layer.ink);
    plotLayer(layer, view, theme, plotter);
  }
  return { numbers: plotter.written(), texts: plotter.texts };
}
