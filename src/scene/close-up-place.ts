/** Where on the side view close-ups come to lie: off the bike and its lines, off what must stay in sight, and near what they show. */
import type { Point } from '../core/plane/point.ts';
import { SQUARE, type Squares } from './covered.ts';
import type { Box } from './shapes/label-placing.ts';

/** What is on the side view while a place is looked for, px of the screen. */
export interface Surroundings {
  readonly widthPx: number;
  readonly heightPx: number;
  /** What no close-up may lie over. */
  readonly clear: readonly Box[];
  /** What bike and lines draw over, and what is kept clear; worked out only while a place is looked for. */
  readonly squares: () => Squares;
  /** Whether a close-up without a free place may lie over a part of the bike, as where the bike fills the window. */
  readonly mayCover: boolean;
}

/** The size that holds a close-up's words with some picture beside them. */
export interface LeastSize {
  readonly widthPx: number;
  readonly heightPx: number;
}

/** The least sizes of a close-up: with all its words, in few, with one line of them, and with that line beside the picture. */
export interface LeastSizes {
  readonly least: LeastSize;
  readonly narrow: LeastSize;
  readonly brief: LeastSize;
  readonly low: LeastSize;
}

/** A close-up to be placed, and where on the screen what it shows lies. */
export interface ToPlace extends LeastSizes {
  readonly near: Point;
}

type Form = readonly [number, number] | 'narrow' | 'brief' | 'low';

/** Free space to what is kept clear, px, and to the window's edge, in squares. */
const CLEARANCE = 3;
const EDGE = 1;
/** Distance between the places tried, in squares: in a window with room for it, a coarser one. */
const FINE = 1;
const COARSE = 2;
const ROOMY = 800;
/** Side of a close-up by the window's width, px. */
const PART_OF_WINDOW = 0.27;
const LEAST_SIDE = 112;
const MOST_SIDE = 300;
/** Forms tried one after another: the width as a part of the side, the height as a part of the width. */
const FORMS: readonly Form[] = [
  [1, 0.85],
  [1, 0.7],
  [0.8, 0.9],
  [1, 0.6],
  [0.8, 0.7],
  [0.65, 1.1],
  [0.65, 0.8],
  [0.65, 0.6],
  'narrow',
];
/** Forms of the first to be placed and of the others: the same for all, then a smaller one for the others. */
const PAIRS: readonly (readonly [Form, Form])[] = [
  ...FORMS.map((form) => [form, form] as const),
  ['narrow', 'brief'],
  ['brief', 'brief'],
  ['brief', 'low'],
  ['low', 'low'],
];
/** The part of a close-up that may lie over the bike, where it may at all. */
const MOST_COVERED = 0.25;

/**
 * The boxes for close-ups, in the same order; null where there is no room for one. All of them take the largest of the
 * forms in which all find a place that covers nothing.
 */
export function closeUpPlaces(wanted: readonly ToPlace[], about: Surroundings): (Box | null)[] {
  const ground: Ground = {
    squares: about.squares(),
    step: about.widthPx > ROOMY ? COARSE : FINE,
  };
  const orders = wanted.length > 1 ? [wanted, [...wanted].reverse()] : [wanted];
  let best = new Map<ToPlace, Box>();
  for (const [first, other] of PAIRS)
    for (const order of orders) {
      if (best.size === wanted.length) break;
      const found = new Map<ToPlace, Box>();
      for (const each of order) {
        const size = sizeOf(each, each === order[0] ? first : other, about);
        const box = placeOf(each.near, size, [...found.values()], ground, 0);
        if (box !== null) found.set(each, box);
      }
      if (worth(found.keys(), wanted) > worth(best.keys(), wanted)) best = found;
    }
  for (const each of about.mayCover ? wanted : []) {
    if (best.has(each)) continue;
    const size = each.brief;
    const most = (MOST_COVERED * size.widthPx * size.heightPx) / SQUARE ** 2;
    const box = placeOf(each.near, size, [...best.values()], ground, most);
    if (box !== null) best.set(each, box);
  }
  return wanted.map((each) => best.get(each) ?? null);
}

/** Whether a close-up may stay where it is: its words still fit, and it lies over nothing that is kept clear. */
export function mayStay(
  box: Box,
  { brief, low }: LeastSizes,
  { widthPx, heightPx, clear }: Surroundings,
): boolean {
  const { widthPx: least } = isLow(box, brief) ? low : brief;
  return (
    box.right - box.left >= least &&
    box.left >= 0 &&
    box.top >= 0 &&
    box.right <= widthPx &&
    box.bottom <= heightPx &&
    clear.every((other) => apart(box, other))
  );
}

/** Whether boxes that may stay lie over more of the bike, moved under them by now, than one newly placed may. */
export function coverTooMuch(boxes: readonly Box[], squares: Squares): boolean {
  return boxes.some(({ left, top, right, bottom }) => {
    const [wide, high] = [Math.floor((right - left) / SQUARE), Math.floor((bottom - top) / SQUARE)];
    return squares.covered(left / SQUARE, top / SQUARE, wide, high) > MOST_COVERED * wide * high;
  });
}

/** Whether a close-up's words stand beside its picture: it has no height for them above. */
export function isLow({ top, bottom }: Box, brief: LeastSize): boolean {
  return bottom - top < brief.heightPx;
}

/** How good a choice of places is: more close-ups with a place are better, and of equally many those wanted first. */
export function worth<T>(placed: Iterable<T>, wanted: readonly T[]): number {
  let sum = 0;
  for (const each of placed) sum += 1 + (wanted.length - wanted.indexOf(each)) / (2 * wanted.length ** 2);
  return sum;
}

function sizeOf(each: ToPlace, form: Form, { widthPx }: Surroundings): LeastSize {
  if (typeof form === 'string') return each[form];
  const { least } = each;
  const side = Math.min(MOST_SIDE, Math.max(LEAST_SIDE, PART_OF_WINDOW * widthPx));
  const [part, high] = form;
  const width = Math.max(least.widthPx, part * side);
  return { widthPx: width, heightPx: Math.max(least.heightPx, high * width) };
}

interface Ground {
  readonly squares: Squares;
  readonly step: number;
}

/** The place where at most so many squares are covered: of those that cover least the nearest. */
function placeOf(
  near: Point,
  { widthPx, heightPx }: LeastSize,
  others: readonly Box[],
  { squares, step }: Ground,
  most: number,
): Box | null {
  let best: Box | null = null;
  let [leastOver, leastAway] = [most, Infinity];
  const [wide, high] = [Math.ceil(widthPx / SQUARE), Math.ceil(heightPx / SQUARE)];
  const [width, height] = [wide * SQUARE, high * SQUARE];
  for (let column = squares.columns - EDGE - wide; column >= EDGE; column -= step)
    for (let row = EDGE; row <= squares.rows - EDGE - high; row += step) {
      const over = squares.covered(column, row, wide, high);
      if (over > leastOver) continue;
      const [left, top] = [column * SQUARE, row * SQUARE];
      const box = { left, top, right: left + width, bottom: top + height };
      const away = distance(box, near);
      if (over === leastOver && away >= leastAway) continue;
      if (!others.every((other) => apart(box, other))) continue;
      [best, leastOver, leastAway] = [box, over, away];
    }
  return best;
}

function apart(a: Box, b: Box): boolean {
  return (
    a.right + CLEARANCE <= b.left ||
    b.right + CLEARANCE <= a.left ||
    a.bottom + CLEARANCE <= b.top ||
    b.bottom + CLEARANCE <= a.top
  );
}

function distance({ left, top, right, bottom }: Box, { x, y }: Point): number {
  return Math.hypot(Math.max(left - x, 0, x - right), Math.max(top - y, 0, y - bottom));
}
