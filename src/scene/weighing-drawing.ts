/** A bike on its scales, level or with one axle raised: wheels, scales, blocks, centre of gravity and what is measured. */
import type { Point } from '../core/plane/point.ts';
import type { WeighedEnd } from '../core/weighing/weigh-in-figures.ts';
import { groundShapes } from './ground-drawing.ts';
import { placeLabels, type WantedLabel } from './shapes/label-placing.ts';
import { pen, segment } from './shapes/outline.ts';
import type { Scene, Shape } from './shapes/shape.ts';
import type { View } from './shapes/view.ts';

export interface WeighingShown {
  readonly wheelbase: number;
  readonly frontRadius: number;
  readonly rearRadius: number;
  readonly first: 'wheelsLevel' | 'axlesLevel';
  /** The axle that is up and how far, mm; null while the bike is level. */
  readonly raised: { readonly end: WeighedEnd; readonly lift: number } | null;
  /** The wheels that stand on a scale which is read, with the words beside each. */
  readonly scales: Partial<Readonly<Record<WeighedEnd, string>>>;
  /** The wheelbase in words, or the lift while an axle is raised. */
  readonly dimension: string;
  /** Centre of gravity with both wheels on level ground, mm from the rear patch; null while it is not known. */
  readonly centre: Point | null;
}

export interface WeighingWindow {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly sizePx: number;
}

/** Scales and what is free beside and above the bike, mm. */
const SCALE_HEIGHT = 34;
const SCALE_REACH = 150;
const BESIDE = 60;
const ABOVE = 60;
/** Room for the words of the scales below the ground, how far below it the wheelbase is dimensioned, and its words, px. */
const SCALE_WORDS_PX = 34;
const WHEELBASE_PX = 36;
const WHEELBASE_WORDS_PX = 64;
const MARGIN_PX = 6;
/** How far the guides run past the dimension, px. */
const GUIDE_PAST_PX = 6;
/** How deep the rim looks, as a part of the tyre's radius, and the size of the sign of the centre, px. */
const RIM_PART = 0.74;
const CENTRE_PX = 7;
/** How far beside the raised wheel the lift is dimensioned, mm. */
const LIFT_BESIDE = 70;

interface BikePlaces {
  readonly axle: Readonly<Record<WeighedEnd, Point>>;
  readonly radius: Readonly<Record<WeighedEnd, number>>;
  /** Height of each axle in the first weighing, mm. */
  readonly before: Readonly<Record<WeighedEnd, number>>;
}

/** Where both axles are, above the upper side of the scales; the rear one lies at x = 0 in every position. */
function placeBike({ wheelbase, frontRadius, rearRadius, first, raised }: WeighingShown): BikePlaces {
  const apart = Math.hypot(wheelbase, frontRadius - rearRadius);
  const level = Math.max(frontRadius, rearRadius);
  const before =
    first === 'axlesLevel' ? { front: level, rear: level } : { front: frontRadius, rear: rearRadius };
  const liftOf = (end: WeighedEnd): number => (raised?.end === end ? raised.lift : 0);
  const front = before.front + liftOf('front');
  const rear = before.rear + liftOf('rear');
  const reach = Math.sqrt(Math.max(0, apart * apart - (front - rear) ** 2));
  return {
    axle: { front: { x: reach, y: front }, rear: { x: 0, y: rear } },
    radius: { front: frontRadius, rear: rearRadius },
    before,
  };
}

/** The centre carried from level ground to where the axles are now. */
function centreNow(shown: WeighingShown, { axle }: BikePlaces): Point | null {
  const { centre, wheelbase, frontRadius, rearRadius } = shown;
  if (centre === null) return null;
  const turn =
    Math.atan2(axle.front.y - axle.rear.y, axle.front.x) - Math.atan2(frontRadius - rearRadius, wheelbase);
  const dx = centre.x;
  const dy = centre.y - rearRadius;
  return {
    x: axle.rear.x + dx * Math.cos(turn) - dy * Math.sin(turn),
    y: axle.rear.y + dx * Math.sin(turn) + dy * Math.cos(turn),
  };
}

function box(x: number, reach: number, bottom: number, top: number): Shape {
  return pen()
    .move(x - reach, bottom)
    .line(x + reach, bottom, x + reach, top, x - reach, top)
    .close()
    .shape('clamp');
}

function weighingView(place: BikePlaces, wordsPx: number, window: WeighingWindow): View {
  const { axle, radius } = place;
  const left = -radius.rear - BESIDE;
  const right = axle.front.x + radius.front + BESIDE;
  const top = Math.max(axle.front.y + radius.front, axle.rear.y + radius.rear) + ABOVE;
  const bottom = -SCALE_HEIGHT;
  const across = Math.max(1, window.widthPx - 2 * MARGIN_PX);
  const upright = Math.max(1, window.heightPx - wordsPx - MARGIN_PX);
  const scale = Math.min(across / (right - left), upright / (top - bottom));
  return {
    scale,
    turn: 0,
    xPx: window.widthPx / 2 - (scale * (left + right)) / 2,
    yPx: MARGIN_PX + upright / 2 + (scale * (bottom + top)) / 2,
  };
}

/** The scene and the view it is made for; both axles, both tyres and the lift to one scale. */
export function weighingScene(shown: WeighingShown, window: WeighingWindow): { scene: Scene; view: View } {
  const place = placeBike(shown);
  const { axle, radius, before } = place;
  const view = weighingView(place, shown.raised === null ? WHEELBASE_WORDS_PX : SCALE_WORDS_PX, window);
  const ends: readonly WeighedEnd[] = ['rear', 'front'];
  const stands: Shape[] = ends.flatMap((end) => {
    const { x, y } = axle[end];
    const patch = y - radius[end];
    const scale = shown.scales[end] === undefined ? 0 : SCALE_HEIGHT;
    // What carries the wheel or, when no scale is under it, the paddock stand that carries the axle.
    const block =
      patch + SCALE_HEIGHT > scale ? [box(x, SCALE_REACH * 0.7, -SCALE_HEIGHT, patch - scale)] : [];
    return scale > 0 ? [...block, box(x, SCALE_REACH, patch - scale, patch)] : block;
  });
  const wheels: Shape[] = ends.flatMap((end) => {
    const { x, y } = axle[end];
    const rim = RIM_PART * radius[end];
    return [
      pen().circle(x, y, radius[end]).circle(x, y, rim).shape('tyre'),
      pen().circle(x, y, rim).shape('rim'),
      pen()
        .circle(x, y, 0.06 * radius[end])
        .shape('axle'),
    ];
  });
  const { raised } = shown;
  const below = -SCALE_HEIGHT - WHEELBASE_PX / view.scale;
  const measured: Shape[] = [];
  const wanted: WantedLabel[] = [];
  const { sizePx } = window;
  if (raised === null) {
    measured.push(
      ...ends.map((end) =>
        segment(
          'snapGuide',
          { x: axle[end].x, y: axle[end].y },
          { x: axle[end].x, y: below - GUIDE_PAST_PX / view.scale },
        ),
      ),
      segment('dimension', { x: 0, y: below }, { x: axle.front.x, y: below }, { arrows: 'both' }),
    );
    wanted.push({
      role: 'dimension',
      text: shown.dimension,
      at: { x: axle.front.x / 2, y: below },
      spot: 'below',
      sizePx,
    });
  } else {
    const { end } = raised;
    // Toward the middle of the bike, where there is room for its words.
    const x = axle[end].x + (end === 'rear' ? 1 : -1) * (radius[end] + LIFT_BESIDE);
    const from = { x, y: before[end] };
    const to = { x, y: axle[end].y };
    measured.push(
      segment('snapGuide', { x: axle[end].x, y: before[end] }, from),
      segment('snapGuide', { x: axle[end].x, y: axle[end].y }, to),
      segment('dimension', from, to, { arrows: 'both' }),
    );
    wanted.push({
      role: 'dimension',
      text: shown.dimension,
      at: { x, y: (before[end] + axle[end].y) / 2 },
      spot: end === 'rear' ? 'right' : 'left',
      sizePx,
    });
  }
  for (const end of ends) {
    const text = shown.scales[end];
    if (text !== undefined)
      wanted.push({
        role: 'dimension',
        text,
        at: { x: axle[end].x, y: axle[end].y - radius[end] - SCALE_HEIGHT },
        spot: 'below',
        sizePx,
      });
  }
  const centre = centreNow(shown, place);
  const construction: Shape[] = [
    segment('swingarmLine', axle.rear, axle.front),
    ...measured,
    ...(centre === null
      ? []
      : [
          {
            kind: 'mark' as const,
            role: 'centreOfGravity' as const,
            at: centre,
            sign: 'quartered' as const,
            radiusPx: CENTRE_PX,
          },
        ]),
  ];
  const ground = groundShapes().map((shape) => lower(shape, SCALE_HEIGHT));
  return {
    view,
    scene: [
      { name: 'bike', ink: 1, shapes: [...ground, ...stands, ...wheels] },
      { name: 'construction', ink: 1, shapes: construction },
      { name: 'labels', ink: 1, shapes: placeLabels(wanted, view, window.widthPx, window.heightPx) },
    ],
  };
}

/** The ground, on which the scales stand. */
function lower(shape: Shape, by: number): Shape {
  if (shape.kind !== 'path') return shape;
  return {
    ...shape,
    steps: shape.steps.map((step) =>
      step.op === 'move' || step.op === 'line' ? { ...step, y: step.y - by } : step,
    ),
  };
}
