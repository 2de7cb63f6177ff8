/** The close-ups on the side view: which there are, and where each stays while what it shows is being changed. */
import { closeUpPlace, mayStay, type Surroundings } from '../scene/close-up-place.ts';
import { closeUps, type CloseUp, type CloseUpKey } from '../scene/close-ups.ts';
import { keptClear, trailWordsBox } from '../scene/construction/kept-clear.ts';
import type { Box } from '../scene/shapes/label-placing.ts';
import { bikeShapes } from '../scene/bike/bike-drawing.ts';
import type { PathStep, Role, Shape } from '../scene/shapes/shape.ts';
import { toScreen } from '../scene/shapes/view.ts';
import type { Point } from '../core/plane/point.ts';
import type { CloseUpDrawing, Drawing, DrawnAs } from './drawing.svelte.ts';
import type { SideView } from './side-view.svelte.ts';

/** The parts of the bike that a close-up keeps off. */
const OUTLINE: readonly Role[] = [
  'tyre',
  'bodywork',
  'seat',
  'engine',
  'frame',
  'fork',
  'forkTube',
  'swingarm',
  'shock',
];
/** Places looked at on a drawn circle, at its edge and half-way to the middle. */
const ROUND = 12;

/** What the close-ups follow; the workbench holds it for the page. */
export interface CloseUpsOf {
  readonly preferences: DrawnAs;
  readonly drawing: Drawing;
  readonly sideView: SideView;
  readonly handles: { readonly boxes: readonly Box[] };
}

export class CloseUps {
  readonly #bench: CloseUpsOf;
  /** Where each lies, so that it does not wander during a drag; plain data. */
  #boxes: Partial<Record<CloseUpKey, Box>> = {};

  readonly drawing: CloseUpDrawing = $derived.by(() => {
    const { preferences, drawing, sideView } = this.#bench;
    const { live, baseline, problem } = drawing.bikes;
    const isShown = preferences.data.shadow && preferences.data.labels && drawing.differs && problem === null;
    if (!isShown || live === null || baseline === null) return this.#forget();
    const { view, widthPx, heightPx } = sideView;
    const options = { style: preferences.style, sizePx: drawing.closeUpPx, view };
    const wanted = closeUps(live.stance, baseline.stance, options);
    if (wanted.length === 0) return this.#forget();
    const clear = [
      ...keptClear(live.stance, view),
      trailWordsBox(live.stance, view, drawing.textPx),
      ...this.#bench.handles.boxes,
    ];
    const bike = (): Point[] =>
      bikeShapes(live.stance, live.bike, live.setup).flatMap((shape) =>
        shape.kind === 'path' && OUTLINE.includes(shape.role)
          ? shape.steps.flatMap(placesOf).map((place) => toScreen(view, place))
          : [],
      );
    const shapes: Shape[] = [];
    const boxes: Box[] = [];
    for (const closeUp of wanted) {
      const about: Surroundings = { widthPx, heightPx, clear: [...clear, ...boxes], bike };
      const box = this.#boxOf(closeUp, toScreen(view, closeUp.at), about);
      const drawn = box === null ? [] : closeUp.draw(box);
      if (box === null || drawn.length === 0) continue;
      shapes.push(...drawn);
      boxes.push(box);
    }
    return { shapes, boxes };
  });

  constructor(bench: CloseUpsOf) {
    this.#bench = bench;
    bench.drawing.closeUps = () => this.drawing;
  }

  #boxOf({ key, least }: CloseUp, near: Point, about: Surroundings): Box | null {
    const kept = this.#boxes[key];
    if (kept !== undefined && kept.right - kept.left >= least.widthPx && mayStay(kept, about)) return kept;
    const found = closeUpPlace(near, least, about);
    if (found === null) delete this.#boxes[key];
    else this.#boxes[key] = found;
    return found;
  }

  #forget(): CloseUpDrawing {
    this.#boxes = {};
    return NO_CLOSE_UPS;
  }
}

const NO_CLOSE_UPS: CloseUpDrawing = { shapes: [], boxes: [] };

function placesOf(step: PathStep): Point[] {
  if (step.op === 'close') return [];
  if (step.op !== 'arc') return [{ x: step.x, y: step.y }];
  return Array.from({ length: ROUND }, (_, i) => {
    const angle = (2 * Math.PI * i) / ROUND;
    return [1, 0.5].map((part) => ({
      x: step.cx + part * step.radius * Math.cos(angle),
      y: step.cy + part * step.radius * Math.sin(angle),
    }));
  }).flat();
}
