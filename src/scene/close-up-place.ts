/** Where on the side view a close-up comes to lie: near what it shows, off what must stay in sight, and off the bike. */
import type { Point } from '../core/plane/point.ts';
import type { Box } from './shapes/label-placing.ts';

/** What a place is sought among, px of the screen. */
export interface Surroundings {
  readonly widthPx: number;
  readonly heightPx: number;
  /** What no close-up may lie over. */
  readonly clear: readonly Box[];
  /** Places on the bike's outline, of which as few as possible are covered; asked for only where a place is sought. */
  readonly bike: () => readonly Point[];
}

/** Free space to the window's edge and to what is kept clear, px. */
const EDGE = 6;
const CLEARANCE = 3;
/** Distance between the places tried, px. */
const STEP = 8;
/** Side of a close-up by the window's width, px. */
const PART_OF_WINDOW = 0.27;
const LEAST_SIDE = 112;
const MOST_SIDE = 300;
/** Forms tried one after another: the width as a part of the side, the height as a part of the width. */
const FORMS: readonly (readonly [number, number])[] = [
  [1, 0.85],
  [1, 0.62],
  [0.85, 0.8],
  [0.7, 0.75],
];
/** What a covered place of the bike costs, in px of distance. */
const COVERED = 18;
/** A place at which at most so many places of the bike are covered is good enough to look at no smaller size. */
const GOOD = 3;

/** The size that holds a close-up's words with some picture beside them. */
export interface LeastSize {
  readonly widthPx: number;
  readonly heightPx: number;
}

/** The box for a close-up of what lies at `near`; null where there is no room for one. */
export function closeUpPlace(near: Point, least: LeastSize, about: Surroundings): Box | null {
  let best: { box: Box; cost: number } | null = null;
  let outline: readonly Point[] | null = null;
  const bike = (): readonly Point[] => (outline ??= about.bike());
  for (const [width, height] of sizes(least, about)) {
    const found = bestOfSize(width, height, near, about, bike);
    if (found === null) continue;
    if (found.covered <= GOOD) return found.box;
    if (best === null || found.cost < best.cost) best = found;
  }
  return best?.box ?? null;
}

/** Whether a close-up may stay where it is. */
export function mayStay(box: Box, { widthPx, heightPx, clear }: Surroundings): boolean {
  return (
    box.left >= 0 &&
    box.top >= 0 &&
    box.right <= widthPx &&
    box.bottom <= heightPx &&
    clear.every((other) => apart(box, other))
  );
}

function sizes(least: LeastSize, { widthPx }: Surroundings): (readonly [number, number])[] {
  const side = Math.min(MOST_SIDE, Math.max(LEAST_SIDE, PART_OF_WINDOW * widthPx));
  return FORMS.map(([part, high]) => {
    const width = Math.max(least.widthPx, LEAST_SIDE, part * side);
    return [width, Math.max(least.heightPx, high * width)] as const;
  });
}

function bestOfSize(
  width: number,
  height: number,
  near: Point,
  { widthPx, heightPx, clear }: Surroundings,
  bike: () => readonly Point[],
): { box: Box; cost: number; covered: number } | null {
  let best: { box: Box; cost: number; covered: number } | null = null;
  const [mostLeft, mostTop] = [widthPx - EDGE - width, heightPx - EDGE - height];
  for (let left = mostLeft; left >= EDGE; left -= STEP)
    for (let top = EDGE; top <= mostTop; top += STEP) {
      const box = { left, top, right: left + width, bottom: top + height };
      const inTheWay = clear.find((other) => !apart(box, other));
      if (inTheWay !== undefined) {
        // Every place down to its lower edge meets it too.
        top += STEP * Math.max(0, Math.ceil((inTheWay.bottom + CLEARANCE - top) / STEP) - 1);
        continue;
      }
      const away = distance(box, near);
      if (best !== null && away >= best.cost) continue;
      const covered = bike().reduce((sum, place) => sum + (holds(box, place) ? 1 : 0), 0);
      const cost = COVERED * covered + away;
      if (best === null || cost < best.cost) best = { box, cost, covered };
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

function holds({ left, top, right, bottom }: Box, { x, y }: Point): boolean {
  return x > left && x < right && y > top && y < bottom;
}

function distance({ left, top, right, bottom }: Box, { x, y }: Point): number {
  return Math.hypot(Math.max(left - x, 0, x - right), Math.max(top - y, 0, y - bottom));
}
