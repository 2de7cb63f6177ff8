/** The close-ups on the side view: which there are, and where each stays while what it shows is being changed. */
import { closeUpPlaces, mayStay, type Surroundings } from '../scene/close-up-place.ts';
import { changeInBrackets, closeUps, type CloseUp, type CloseUpKey } from '../scene/close-ups.ts';
import { keptClear, trailWordsBox } from '../scene/construction/kept-clear.ts';
import { zoneLabels, type ChangeText } from '../scene/construction/side-view-labels.ts';
import { labelBox, placeLabels, type Box } from '../scene/shapes/label-placing.ts';
import { bikeShapes } from '../scene/bike/bike-drawing.ts';
import type { Shape } from '../scene/shapes/shape.ts';
import { toScreen, type View } from '../scene/shapes/view.ts';
import { constructionShapes, standingConstructions } from '../scene/construction/construction-drawing.ts';
import { squaresOf } from '../scene/covered.ts';
import type { CloseUpDrawing, Drawing, DrawnAs } from './drawing.svelte.ts';
import type { SideView } from './side-view.svelte.ts';

/** What the close-ups follow; the workbench holds it for the page. */
export interface CloseUpsOf {
  readonly preferences: DrawnAs;
  readonly drawing: Drawing;
  readonly sideView: SideView;
  readonly handles: { readonly boxes: readonly Box[] };
  /** Size of words in a close-up, px; left out where it follows from the window's size. */
  readonly closeUpPx?: number;
}

/** Free space between a close-up and what is kept clear, px: as much as words keep from one another. */
const APART = 3;
/** Words in a close-up, px: no larger than they must be, because the picture needs the room. */
const TEXT = { small: 11, normal: 12, large: 14 };

export class CloseUps {
  readonly #bench: CloseUpsOf;
  /** Where each lies, so that it does not wander during a drag, null without room, and the scale that this holds for; plain data. */
  #boxes: Partial<Record<CloseUpKey, Box | null>> = {};
  #placedAt = 0;

  readonly drawing: CloseUpDrawing = $derived.by(() => {
    const { preferences, drawing, sideView } = this.#bench;
    const { live, baseline, problem } = drawing.bikes;
    const isShown = preferences.data.shadow && preferences.data.labels && drawing.differs && problem === null;
    if (!isShown || live === null || baseline === null) return this.#forget();
    const { view, widthPx, heightPx } = sideView;
    const options = {
      style: preferences.style,
      sizePx: this.#bench.closeUpPx ?? TEXT[drawing.windowSize],
      view,
    };
    const wanted = closeUps(live.stance, baseline.stance, options);
    if (wanted.length === 0) return this.#forget();
    const names = zoneLabels(live.stance, drawing.labelOptions);
    const clear = [
      ...keptClear(live.stance, view),
      trailWordsBox(live.stance, view, drawing.textPx),
      // The zones' names stay where they are without a close-up.
      ...placeLabels(names, view, widthPx, heightPx, drawing.fixed).map(
        ({ text, sizePx, spot, at, shiftPx }) => labelBox(text, sizePx, spot, toScreen(view, at), shiftPx),
      ),
      ...this.#bench.handles.boxes,
    ];
    const drawn = () => ({
      filled: bikeShapes(live.stance, live.bike, live.setup),
      lines: standingConstructions(live.stance).flatMap((each) => constructionShapes(live.stance, each)),
      kept: clear.map(({ left, top, right, bottom }) => ({
        left: left - APART,
        top: top - APART,
        right: right + APART,
        bottom: bottom + APART,
      })),
    });
    const squares = () => squaresOf(drawn(), view, widthPx, heightPx);
    const about: Surroundings = { widthPx, heightPx, clear, squares };
    const places = this.#places(wanted, view, about);
    const shapes: Shape[] = [];
    const boxes: Box[] = [];
    for (const closeUp of wanted) {
      const box = places[closeUp.key];
      const drawn = box === undefined ? [] : closeUp.draw(box);
      if (box === undefined || drawn.length === 0) continue;
      shapes.push(...drawn);
      boxes.push(box);
    }
    return { shapes, boxes };
  });

  constructor(bench: CloseUpsOf) {
    this.#bench = bench;
    bench.drawing.closeUps = () => this.drawing;
    bench.drawing.changeText = (...figure) => this.#changeText(...figure);
  }

  /** In brackets how much more or less a figure is than the baseline's where a gauge shows that, save in a small window. */
  readonly #changeText: ChangeText = (now, read, quantity) => {
    const { preferences, drawing } = this.#bench;
    const { baseline } = drawing.bikes;
    if (baseline === null || drawing.windowSize === 'small' || !preferences.data.shadow || !drawing.differs)
      return '';
    return changeInBrackets(read(baseline.stance), now, quantity, preferences.style);
  };

  /** The places kept while all may stay; else new ones for all, so that one that comes later finds its room. */
  #places(
    wanted: readonly CloseUp[],
    view: View,
    about: Surroundings,
  ): Readonly<Partial<Record<CloseUpKey, Box>>> {
    const stays = ({ key, brief }: CloseUp): boolean => {
      const box = this.#boxes[key];
      if (box === undefined) return false;
      return box === null || (box.right - box.left >= brief.widthPx && mayStay(box, about));
    };
    if (this.#placedAt !== view.scale || !wanted.every(stays)) {
      this.#placedAt = view.scale;
      const sought = wanted.map((each) => ({ ...each, near: toScreen(view, each.at) }));
      const found = closeUpPlaces(sought, about);
      this.#boxes = Object.fromEntries(wanted.map(({ key }, i) => [key, found[i]]));
    }
    return Object.fromEntries(Object.entries(this.#boxes).filter(([, box]) => box !== null));
  }

  #forget(): CloseUpDrawing {
    this.#boxes = {};
    return NO_CLOSE_UPS;
  }
}

const NO_CLOSE_UPS: CloseUpDrawing = { shapes: [], boxes: [] };
