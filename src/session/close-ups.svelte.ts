/** The close-ups on the side view: which there are, and where each stays while what it shows is being changed. */
import { closeUpPlaces, coverTooMuch, mayStay, worth, type Surroundings } from '../scene/close-up-place.ts';
import type { CloseUp } from '../scene/close-up.ts';
import { changeInBrackets, closeUps } from '../scene/close-ups.ts';
import { keptClear, trailWordsBox } from '../scene/construction/kept-clear.ts';
import {
  trailLabel,
  zoneLabels,
  type ChangePlace,
  type ChangeText,
} from '../scene/construction/side-view-labels.ts';
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

/** What close-ups find their places among. */
interface Room {
  /** With all that is kept clear, the zones' names where they stand without a close-up; then with less of it. */
  readonly among: readonly Surroundings[];
  /** What is kept clear in any case. */
  readonly kept: Surroundings;
  /** Whether all names of zones find a place beside boxes. */
  holdsNames(boxes: readonly Box[]): boolean;
}

/** Free space between a close-up and what is kept clear, px: as much as words keep from one another. */
const APART = 3;
/** The view may be pushed so far before it is looked whether close-ups came to lie over the bike, px. */
const PUSHED = 48;
/** Words in a close-up, px: no larger than they must be, because the picture needs the room. */
const TEXT = { small: 11, normal: 12, large: 14 };

export class CloseUps {
  readonly #bench: CloseUpsOf;
  /** Where each lies, kept so that it does not wander during a drag, and in which view; null without room. Plain data. */
  #boxes: Partial<Record<ChangePlace, Box | null>> = {};
  #placedAt: View | null = null;
  /** Whether the zones' names make room for the close-ups. */
  #namesMove = false;

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
    const trail = trailLabel(live.stance, { ...drawing.labelOptions, change: () => '' });
    const named = (taken: readonly Box[]) =>
      placeLabels([trail, ...names], view, widthPx, heightPx, [...drawing.fixed, ...taken]).filter(
        ({ role }) => role === 'zoneName',
      );
    const kept = [
      ...keptClear(live.stance, view),
      trailWordsBox(live.stance, view, drawing.textPx),
      ...this.#bench.handles.boxes,
    ];
    const namesAt = named([]).map(({ text, sizePx, spot, at, shiftPx }) => ({
      text,
      box: labelBox(text, sizePx, spot, toScreen(view, at), shiftPx),
    }));
    const nameBoxes = namesAt.map(({ box }) => box);
    // The name of the uppermost zone as high as zone and window let it go.
    const raisedBoxes = namesAt.map(({ text, box }) => {
      const { above = 0 } = names.find((each) => each.text === text) ?? {};
      const most = Math.min(above * view.scale - (box.bottom - box.top), box.top - APART - 1);
      const up = text === names[0].text ? Math.max(0, most) : 0;
      return { ...box, top: box.top - up, bottom: box.bottom - up };
    });
    let bike: readonly Shape[] | null = null;
    const about = (clear: readonly Box[], offLines = true): Surroundings => ({
      widthPx,
      heightPx,
      clear,
      mayCover: sideView.chosen,
      squares: () =>
        squaresOf(
          {
            filled: (bike ??= bikeShapes(live.stance, live.bike, live.setup)),
            lines: offLines
              ? standingConstructions(live.stance).flatMap((each) => constructionShapes(live.stance, each))
              : [],
            kept: clear.map(({ left, top, right, bottom }) => ({
              left: left - APART,
              top: top - APART,
              right: right + APART,
              bottom: bottom + APART,
            })),
          },
          view,
          widthPx,
          heightPx,
        ),
    });
    const places = this.#places(wanted, view, {
      among: [
        about([...kept, ...nameBoxes]),
        // In a small window the uppermost name goes up, then lines that run on beside the bike may be covered.
        ...(drawing.windowSize === 'small'
          ? [
              about([...kept, ...raisedBoxes]),
              about([...kept, ...raisedBoxes], false),
              about([...kept, ...nameBoxes], false),
            ]
          : []),
      ],
      kept: about(kept),
      holdsNames: (boxes) => named(boxes).length === namesAt.length,
    });
    const shapes: Shape[] = [];
    const boxes: Box[] = [];
    const missing: ChangePlace[] = [];
    for (const closeUp of wanted) {
      const box = places[closeUp.key];
      const drawn = box === undefined ? [] : closeUp.draw(box);
      if (box === undefined || drawn.length === 0) {
        missing.push(closeUp.key);
        continue;
      }
      shapes.push(...drawn);
      boxes.push(box);
    }
    return { shapes, boxes, missing };
  });

  constructor(bench: CloseUpsOf) {
    this.#bench = bench;
    bench.drawing.closeUps = () => this.drawing;
    bench.drawing.changeText = (...figure) => this.#changeText(...figure);
  }

  /**
   * In brackets how much more or less a figure is than the baseline's where a gauge shows that; in a small window only
   * where the close-up that would show it has no room.
   */
  readonly #changeText: ChangeText = (now, { read, quantity, place }) => {
    const { preferences, drawing } = this.#bench;
    const { baseline } = drawing.bikes;
    if (baseline === null || !preferences.data.shadow || !drawing.differs) return '';
    if (drawing.windowSize === 'small' && !this.drawing.missing.includes(place)) return '';
    return changeInBrackets(read(baseline.stance), now, quantity, preferences.style);
  };

  /** The places kept while all may stay; else new ones for all, so that one that comes later finds its room. */
  #places(
    wanted: readonly CloseUp[],
    view: View,
    { among, kept, holdsNames }: Room,
  ): Readonly<Partial<Record<ChangePlace, Box>>> {
    const about = this.#namesMove ? kept : among[0];
    const stays = (closeUp: CloseUp): boolean => {
      const box = this.#boxes[closeUp.key];
      return box !== undefined && (box === null || mayStay(box, closeUp, about));
    };
    const there = (boxes: readonly (Box | null | undefined)[]) =>
      boxes.filter((box) => box !== null && box !== undefined);
    const boxes = there(wanted.map(({ key }) => this.#boxes[key]));
    const stay =
      this.#placedAt?.scale === view.scale &&
      wanted.every(stays) &&
      (!this.#namesMove || holdsNames(boxes)) &&
      this.#holdsWhenPushed(view, boxes.length === wanted.length, () => coverTooMuch(boxes, about.squares()));
    if (!stay) {
      this.#placedAt = view;
      const sought = wanted.map((each) => ({ ...each, near: toScreen(view, each.at) }));
      const worthOf = (boxes: readonly (Box | null)[]) =>
        worth(
          sought.filter((_, i) => boxes[i] !== null),
          sought,
        );
      let found = closeUpPlaces(sought, among[0]);
      this.#namesMove = false;
      for (const each of among.slice(1)) {
        if (there(found).length === wanted.length) break;
        const places = closeUpPlaces(sought, each);
        if (worthOf(places) <= worthOf(found) || !holdsNames(there(places))) continue;
        found = places;
        this.#namesMove = true;
      }
      this.#boxes = Object.fromEntries(wanted.map(({ key }, i) => [key, found[i]]));
    }
    return Object.fromEntries(Object.entries(this.#boxes).filter(([, box]) => box !== null));
  }

  /** Whether the places still hold once the view has been pushed: all are there, and none lies over much of the bike. */
  #holdsWhenPushed(view: View, allThere: boolean, coverMuch: () => boolean): boolean {
    const { xPx, yPx } = this.#placedAt ?? view;
    if (Math.hypot(view.xPx - xPx, view.yPx - yPx) < PUSHED) return true;
    if (!allThere || coverMuch()) return false;
    this.#placedAt = view;
    return true;
  }

  #forget(): CloseUpDrawing {
    this.#boxes = {};
    return NO_CLOSE_UPS;
  }
}

const NO_CLOSE_UPS: CloseUpDrawing = { shapes: [], boxes: [], missing: [] };
