/** The scene on the side view, layer by layer, made anew only where what it shows has changed. */
import type { Attachment } from 'svelte/attachments';
import type { Construction } from '../core/readings/reading.ts';
import type { Point } from '../core/plane/point.ts';
import { bikeShapes } from '../scene/bike/bike-drawing.ts';
import {
  constructionShapes,
  highlightShapes,
  standingConstructions,
} from '../scene/construction/construction-drawing.ts';
import { dimensionLabel, dimensionShapes } from '../scene/construction/dimension-drawing.ts';
import { groundShapes } from '../scene/ground-drawing.ts';
import { frontWheelBox, keptClear } from '../scene/construction/kept-clear.ts';
import { placeLabels, type Box, type WantedLabel } from '../scene/shapes/label-placing.ts';
import type * as GhostDrawing from '../scene/ghost-drawing.ts';
import { alignedAt, shadowShapes } from '../scene/shadow-drawing.ts';
import { rubbingLabels, rubbingShapes } from '../scene/chain/rubbing-drawing.ts';
import type { Scene, SceneLayer, Shape } from '../scene/shapes/shape.ts';
import {
  sideViewLabels,
  trailLabel,
  zoneLabels,
  type ChangePlace,
  type ChangeText,
  type FigureText,
} from '../scene/construction/side-view-labels.ts';
import { toScreen } from '../scene/shapes/view.ts';
import type { Theme } from '../scene/shapes/theme.ts';
import { zoneShapes } from '../scene/construction/zones.ts';
import type { BikeSession } from './bike-session.svelte.ts';
import type { Preferences } from './preferences.svelte.ts';
import type { DrawnBikes } from './standing.svelte.ts';
import type { SideView } from './side-view.svelte.ts';

/** How much ink is left of a bike that is not the present one because the present one has no pose. */
const DIMMED = 0.3;
/** Text sizes on the side view, px: by the width of the window, so that a phone still holds the words. */
const SMALL_WINDOW = 520;
const LARGE_WINDOW = 1000;
const LARGE_HEIGHT = 550;
const TEXT = { small: 11, normal: 13, large: 17 };

const NO_CLOSE_UPS: CloseUpDrawing = { shapes: [], boxes: [], missing: [] };

/** A snap guide through a point, or a dimension between two, in ground coordinates. */
export interface Measured {
  readonly from: Point;
  readonly to: Point;
}

/** What is chosen to be drawn, and how figures are written. */
export type DrawnAs = Pick<Preferences, 'data' | 'style'>;

/** What the close-ups draw, and the boxes of the screen that they take, px. */
export interface CloseUpDrawing {
  readonly shapes: readonly Shape[];
  readonly boxes: readonly Box[];
  /** Where one that would show a change has no room. */
  readonly missing: readonly ChangePlace[];
}

/** How surely points stand where they are drawn, as outlines about them, and in words how large the outlines are. */
export interface SpreadDrawing {
  readonly shapes: readonly Shape[];
  readonly label: Omit<WantedLabel, 'sizePx'>;
}

/** How something comes under the drawing, and the drawing's theme over it. */
export interface Underlay {
  readonly attach: Attachment<HTMLElement>;
  readonly retheme: (theme: Theme) => Theme;
}

export class Drawing {
  readonly #session: BikeSession;
  readonly bikes: DrawnBikes;
  readonly #preferences: DrawnAs;
  readonly #view: SideView;
  readonly #textPx: (() => number) | null;
  /** The construction lit up because its reading, or a line of it, was chosen. */
  highlighted = $state<Construction | null>(null);
  /** Whether shock and links are drawn over all else, for a hand that moves their bolts. */
  linksOnTop = $state(false);
  /** Gives the dimension to draw; set once by the class that measures. */
  measured: () => Measured | null = () => null;
  /** Gives what words on the side view must keep clear of; set once by the class of the handles. */
  taken: () => readonly Box[] = () => [];
  /** Gives the other ride states to show as quiet outlines; set once their part of the page has come. */
  ghosts = $state.raw<() => readonly GhostDrawing.Ghost[]>(() => []);
  /** Draws those; set at the same time. */
  drawGhosts = $state.raw<typeof GhostDrawing | null>(null);
  /** Gives the close-ups of what changed; set once their part of the page has come. */
  closeUps = $state.raw<() => CloseUpDrawing>(() => NO_CLOSE_UPS);
  /** Gives the words behind a figure that changed; set once their part of the page has come. */
  changeText = $state.raw<ChangeText>(() => '');
  /** Writes a figure with as many digits as its ± leaves it; set once the part of the page that works out the ± has come. */
  figureText = $state.raw<FigureText>(() => null);
  /** Gives how surely points of a measured bike stand; set once the part of the page that works it out has come. */
  spreads = $state.raw<() => SpreadDrawing | null>(() => null);
  /** What lies under the drawing; null where paper does. */
  under = $state.raw<Underlay | null>(null);
  guides = $state.raw<readonly Measured[]>([]);

  readonly #ink = $derived.by(() => (this.bikes.problem === null ? 1 : DIMMED));
  readonly windowSize = $derived.by(() => {
    const { widthPx, heightPx } = this.#view;
    if (widthPx < SMALL_WINDOW) return 'small';
    return widthPx > LARGE_WINDOW && heightPx > LARGE_HEIGHT ? 'large' : 'normal';
  });
  readonly textPx = $derived.by(() => (this.#textPx === null ? TEXT[this.windowSize] : this.#textPx()));
  readonly #zones: SceneLayer = $derived.by(() => {
    const { live } = this.bikes;
    const { zones, band } = this.#preferences.data;
    const shapes: Shape[] = live !== null && zones ? zoneShapes(live.stance, band) : [];
    return { name: 'zones', ink: this.#ink, shapes: [...shapes, ...groundShapes()] };
  });

  /** Whether the live bike differs from the baseline in anything that is saved. */
  readonly differs = $derived.by(() => {
    const { bike, setup, baseline } = this.#session.newest;
    return bike !== baseline.bike || setup !== baseline.setup;
  });

  readonly #shadow: SceneLayer = $derived.by(() => {
    const { live, baseline } = this.bikes;
    const { shadow, align } = this.#preferences.data;
    const shown = shadow && this.differs && live !== null && baseline !== null;
    return {
      name: 'shadow',
      ink: this.#ink,
      shapes: shown ? shadowShapes(baseline.stance, baseline.bike, live.stance, align) : [],
    };
  });

  readonly #ghosts = $derived.by(() => this.ghosts());
  readonly #align = $derived.by(() => this.#preferences.data.align);
  // By number: the outlines are made anew only when the place they hang on has moved.
  readonly #hereX = $derived.by(() => this.#aligned().x);
  readonly #hereY = $derived.by(() => this.#aligned().y);
  readonly #ghostLayer: SceneLayer = $derived.by(() => ({
    name: 'ghosts',
    ink: this.#ink,
    shapes:
      this.#ghosts.length === 0 || this.drawGhosts === null
        ? []
        : this.drawGhosts.ghostShapes(this.#ghosts, this.#align, { x: this.#hereX, y: this.#hereY }),
  }));

  readonly #bike: SceneLayer = $derived.by(() => {
    const { live } = this.bikes;
    return {
      name: 'bike',
      ink: this.#ink,
      shapes: live === null ? [] : bikeShapes(live.stance, live.bike, live.setup, this.linksOnTop),
    };
  });

  readonly #construction: SceneLayer = $derived.by(() => {
    const { live } = this.bikes;
    const shapes: Shape[] = [];
    if (live !== null) {
      const { highlighted } = this;
      if (highlighted !== null) shapes.push(...highlightShapes(live.stance, highlighted));
      const drawn = this.#preferences.data.lines ? standingConstructions(live.stance) : [];
      for (const which of drawn) shapes.push(...constructionShapes(live.stance, which));
      if (highlighted !== null && !drawn.includes(highlighted))
        shapes.push(...constructionShapes(live.stance, highlighted));
      shapes.push(...rubbingShapes(live.stance, live.bike.drive.chainPitch));
    }
    for (const { from, to } of this.guides)
      shapes.push({
        kind: 'path',
        role: 'snapGuide',
        steps: [
          { op: 'move', ...from },
          { op: 'line', ...to },
        ],
      });
    const measured = this.measured();
    if (measured !== null) shapes.push(...dimensionShapes(measured.from, measured.to));
    return { name: 'construction', ink: this.#ink, shapes };
  });

  /** Marks that words must not hide, as boxes on the screen. */
  readonly #marks: readonly Box[] = $derived.by(() =>
    this.#construction.shapes.flatMap((shape) => {
      if (shape.kind !== 'mark') return [];
      const { x, y } = toScreen(this.#view.view, shape.at);
      const half = shape.radiusPx;
      return [{ left: x - half, top: y - half, right: x + half, bottom: y + half }];
    }),
  );

  readonly labelOptions = $derived.by(() => ({
    style: this.#preferences.style,
    sizePx: this.textPx,
    band: this.#preferences.data.band,
    zones: this.#preferences.data.zones,
    brief: this.windowSize === 'small',
    lit: this.highlighted,
    change: this.changeText,
    figure: this.figureText,
  }));

  /** What no word lies over, whatever else there is: points, marks, and what must stay in sight. */
  readonly fixed: readonly Box[] = $derived.by(() => {
    const { live } = this.bikes;
    const kept = live === null ? [] : keptClear(live.stance, this.#view.view);
    return [...this.taken(), ...this.#marks, ...kept];
  });

  readonly #closeUps = $derived.by(() => this.closeUps());

  readonly #spreads = $derived.by(() => this.spreads());
  readonly #spreadLayer: SceneLayer = $derived.by(() => ({
    name: 'spreads',
    ink: this.#ink,
    shapes: this.#spreads?.shapes ?? [],
  }));

  readonly #labels: SceneLayer = $derived.by(() => {
    const { live } = this.bikes;
    const { labels } = this.#preferences.data;
    const options = this.labelOptions;
    const measured = this.measured();
    const wanted =
      live === null
        ? []
        : [
            ...(measured === null ? [] : [dimensionLabel(measured.from, measured.to, options)]),
            ...(labels ? [trailLabel(live.stance, options)] : []),
            // Names of areas can hardly move, so the other words make room for them.
            ...zoneLabels(live.stance, options),
            ...(this.#spreads === null ? [] : [{ ...this.#spreads.label, sizePx: this.textPx }]),
            // Named before the lines: they are there because somebody asked to see them.
            ...(this.drawGhosts?.ghostLabels(this.#ghosts, this.#align, this.#aligned(), this.textPx) ?? []),
            ...(labels
              ? [
                  ...rubbingLabels(live.stance, live.bike.drive.chainPitch, this.textPx),
                  ...sideViewLabels(live.stance, options),
                ]
              : []),
          ];
    const { view, widthPx, heightPx } = this.#view;
    return {
      name: 'labels',
      ink: this.#ink,
      shapes: placeLabels(
        wanted,
        view,
        widthPx,
        heightPx,
        [...this.fixed, ...this.#closeUps.boxes],
        live === null ? [] : [frontWheelBox(live.stance, view)],
      ),
    };
  });

  readonly #closeUpLayer: SceneLayer = $derived.by(() => ({
    name: 'closeUps',
    ink: 1,
    shapes: this.#closeUps.shapes,
  }));

  readonly scene: Scene = $derived([
    this.#zones,
    this.#shadow,
    this.#bike,
    // In front of the bike: a nose that dives or a seat that sinks would be hidden behind it.
    this.#ghostLayer,
    this.#construction,
    this.#spreadLayer,
    this.#labels,
    this.#closeUpLayer,
  ]);

  /** `textPx` where words have a size that does not follow from the window's. */
  constructor(
    session: BikeSession,
    bikes: DrawnBikes,
    preferences: DrawnAs,
    view: SideView,
    textPx: (() => number) | null = null,
  ) {
    this.#textPx = textPx;
    this.#session = session;
    this.bikes = bikes;
    this.#preferences = preferences;
    this.#view = view;
  }

  /** Where the live bike has the place that other bikes are laid on. */
  #aligned(): Point {
    const { live } = this.bikes;
    return live === null ? { x: 0, y: 0 } : alignedAt(live.stance, this.#align);
  }
}
