/** Finds the edge of a rim on a picture from a few clicks near it, to a fraction of a pixel. */
import { fitEllipse, radiusToward, roundness, type Ellipse, type NoEllipse } from '../../plane/ellipse.ts';
import type { Pixel } from './camera.ts';

/** Part of a picture in grey: one number a pixel, by rows; (leftPx, topPx) is its corner on the picture. */
export interface GreyWindow {
  readonly leftPx: number;
  readonly topPx: number;
  readonly widthPx: number;
  readonly heightPx: number;
  readonly light: ArrayLike<number>;
}

export interface RimEdge {
  readonly ok: true;
  readonly points: readonly Pixel[];
  /** How far the points scatter about their ellipse, pixels, or the least that is believed. */
  readonly sdPx: number;
  readonly ellipse: Ellipse;
}

/**
 * `tooFew`: less than three different clicks; `collinear`: clicks on a line; `noEllipse`: clicks on no ellipse;
 * `tooSlanted`: clicks on a narrow ellipse; `tooSmall`: a rim of a few pixels; `noEdge`: less than half of the way
 * round has an edge near the clicks.
 */
export interface NoRimEdge {
  readonly ok: false;
  readonly reason: NoEllipse | 'tooSlanted' | 'tooSmall' | 'noEdge';
}

/** Ways out from the middle along which the edge is looked for, and how many of the points found are kept. */
const RAYS = 96;
const KEPT = 24;
/** How far the edge may lie from the ellipse of the round, as a part of its size: wider while it rests on clicks alone. */
const BANDS = [0.03, 0.012, 0.008] as const;
const LEAST_BAND_PX = 4;
/** Apart along a ray, pixels. */
const STEP_PX = 0.5;
/** Smoothing of the slope of light along a ray, pixels. */
const SMOOTH_PX = 1.2;
/** Slopes below this many levels of 255 a pixel are noise. */
const LEAST_SLOPE = 1.5;
/** Points that lie off the ellipse by more than so many usual distances are of another edge. */
const OUTLIER = 3.5;
const LEAST_OFF_PX = 0.4;
const TRIMS = 6;
/** Lens and lacquer blur an edge: it is known no better than this, pixels. */
const LEAST_SD_PX = 0.3;
const LEAST_SIZE_PX = 12;
const LEAST_ROUND = 0.6;
/** Part of the rays that have to find it. */
const LEAST_PART = 0.5;

/** The part of the picture that the search looks at, as a corner and a size; null where the clicks make no rim. */
export function rimWindow(clicks: readonly Pixel[]): Omit<GreyWindow, 'light'> | null {
  const fitted = fitEllipse(clicks);
  if (!fitted.ok) return null;
  const { centre, size, a, b } = fitted.value;
  const reach = (size / Math.sqrt(1 - Math.hypot(a, b))) * (1 + 2 * BANDS[0]) + 4 * LEAST_BAND_PX;
  const sizePx = Math.ceil(2 * reach);
  return {
    leftPx: Math.floor(centre.x - reach),
    topPx: Math.floor(centre.y - reach),
    widthPx: sizePx,
    heightPx: sizePx,
  };
}

/**
 * Points on the edge nearest to the clicks: along rays from the middle the steepest change of light is looked for, on
 * the side (dark outside or light outside) that most of the way round shows; points of other edges are put aside.
 * Pixels as on the picture, (0, 0) its upper left corner.
 */
export function findRimEdge(window: GreyWindow, clicks: readonly Pixel[]): RimEdge | NoRimEdge {
  const first = fitEllipse(clicks);
  if (!first.ok) return { ok: false, reason: first.reason };
  if (first.value.size < LEAST_SIZE_PX) return { ok: false, reason: 'tooSmall' };
  if (roundness(first.value) < LEAST_ROUND) return { ok: false, reason: 'tooSlanted' };
  let ellipse = first.value;
  let found: readonly Found[] = [];
  for (const part of BANDS) {
    const round = searchRound(window, ellipse, Math.max(LEAST_BAND_PX, part * ellipse.size));
    if (round === null) return { ok: false, reason: 'noEdge' };
    ({ ellipse, found } = round);
  }
  const points = spreadOut(found);
  const square = found.reduce((sum, { off }) => sum + off * off, 0) / found.length;
  return { ok: true, points, sdPx: Math.max(LEAST_SD_PX, Math.sqrt(square)), ellipse };
}

interface Found {
  readonly angle: number;
  readonly at: Pixel;
  /** Outside the ellipse, pixels. */
  readonly off: number;
}

function searchRound(
  window: GreyWindow,
  about: Ellipse,
  band: number,
): { readonly ellipse: Ellipse; readonly found: readonly Found[] } | null {
  const edges = Array.from({ length: RAYS }, (_, i) =>
    edgesAlong(window, about, (2 * Math.PI * i) / RAYS, band),
  );
  const total = (side: 'rise' | 'fall'): number =>
    edges.reduce((sum, each) => sum + (each[side]?.weight ?? 0), 0);
  const side = total('rise') > total('fall') ? 'rise' : 'fall';
  let kept = edges.flatMap((each) => each[side] ?? []);
  let found: Found[] = [];
  let ellipse = about;
  for (let trim = 0; trim < TRIMS; trim++) {
    if (kept.length < LEAST_PART * RAYS) return null;
    const fitted = fitEllipse(kept.map(({ at }) => at));
    if (!fitted.ok) return null;
    ellipse = fitted.value;
    found = kept.map(({ at }) => ({ at, ...outside(ellipse, at) }));
    const sizes = found.map(({ off }) => Math.abs(off)).sort((a, b) => a - b);
    const most = Math.max(LEAST_OFF_PX, OUTLIER * 1.4826 * sizes[sizes.length >> 1]);
    const next = kept.filter((_, i) => Math.abs(found[i].off) <= most);
    if (next.length === kept.length) break;
    kept = next;
  }
  return { ellipse, found };
}

function outside(ellipse: Ellipse, at: Pixel): { readonly angle: number; readonly off: number } {
  const [x, y] = [at.x - ellipse.centre.x, at.y - ellipse.centre.y];
  const angle = Math.atan2(y, x);
  return { angle, off: Math.hypot(x, y) - radiusToward(ellipse, angle) };
}

interface Edge {
  readonly at: Pixel;
  /** Steepness, less for one that lies far from the ellipse. */
  readonly weight: number;
}

/** The best change of light to a lighter and to a darker outside along one ray; null where there is none. */
function edgesAlong(
  window: GreyWindow,
  about: Ellipse,
  angle: number,
  band: number,
): { readonly rise: Edge | null; readonly fall: Edge | null } {
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  const radius = radiusToward(about, angle);
  const half = Math.ceil(band / STEP_PX);
  const more = SLOPE.length >> 1;
  const light: number[] = [];
  for (let i = -half - more; i <= half + more; i++) {
    const r = radius + i * STEP_PX;
    let sum = 0;
    for (const across of [-1, 0, 1]) {
      const level = lightAt(window, about.centre.x + r * c - across * s, about.centre.y + r * s + across * c);
      if (level === null) return { rise: null, fall: null };
      sum += level / 3;
    }
    light.push(sum);
  }
  const slopes = Array.from({ length: 2 * half + 1 }, (_, i) =>
    SLOPE.reduce((sum, weight, k) => sum + weight * light[i + k], 0),
  );
  const best = (sign: 1 | -1): Edge | null => {
    let top: Edge | null = null;
    for (let i = 1; i < slopes.length - 1; i++) {
      const [before, here, after] = [sign * slopes[i - 1], sign * slopes[i], sign * slopes[i + 1]];
      if (!(here > LEAST_SLOPE && here >= before && here > after)) continue;
      const finer = (before - after) / (2 * (before - 2 * here + after));
      const away = (i - half + finer) * STEP_PX;
      const weight = here * (1 - 0.7 * Math.min(1, Math.abs(away) / band));
      if (top !== null && weight <= top.weight) continue;
      const r = radius + away;
      top = { at: { x: about.centre.x + r * c, y: about.centre.y + r * s }, weight };
    }
    return top;
  };
  return { rise: best(1), fall: best(-1) };
}

/** Slope of the light, levels a pixel, as weights of neighbours along a ray. */
const SLOPE: readonly number[] = slopeWeights();

function slopeWeights(): readonly number[] {
  const half = Math.ceil((3 * SMOOTH_PX) / STEP_PX);
  const places = Array.from({ length: 2 * half + 1 }, (_, i) => (i - half) * STEP_PX);
  const raw = places.map((t) => t * Math.exp(-(t * t) / (2 * SMOOTH_PX ** 2)));
  const slope = raw.reduce((sum, weight, i) => sum + weight * places[i], 0);
  return raw.map((weight) => weight / slope);
}

/** Light between four pixels; null outside the window. */
function lightAt(
  { leftPx, topPx, widthPx, heightPx, light }: GreyWindow,
  x: number,
  y: number,
): number | null {
  const [u, v] = [x - leftPx - 0.5, y - topPx - 0.5];
  const [column, row] = [Math.floor(u), Math.floor(v)];
  if (column < 0 || row < 0 || column + 1 >= widthPx || row + 1 >= heightPx) return null;
  const [right, down] = [u - column, v - row];
  const at = row * widthPx + column;
  return (
    (light[at] * (1 - right) + light[at + 1] * right) * (1 - down) +
    (light[at + widthPx] * (1 - right) + light[at + widthPx + 1] * right) * down
  );
}

/** So many of the points as a photo needs, even round the rim. */
function spreadOut(found: readonly Found[]): readonly Pixel[] {
  const inOrder = [...found].sort((a, b) => a.angle - b.angle);
  const count = Math.min(KEPT, inOrder.length);
  return Array.from({ length: count }, (_, i) => inOrder[Math.floor((i * inOrder.length) / count)].at);
}
