/** What every close-up has: its place, its least sizes, its heading, and the page that it is drawn on. */
import type { StandingBike } from '../core/riding/stand-bike.ts';
import { shownDifference, writeNumber, type NumberStyle } from '../core/units/number-style.ts';
import type { Point } from '../core/plane/point.ts';
import { shownChange } from '../words/change/shown-change.ts';
import { LEAST_PICTURE, leastSize, LINE, type CloseUpPage } from './close-up-frame.ts';
import { isLow, type LeastSizes } from './close-up-place.ts';
import type { ChangePlace } from './construction/side-view-labels.ts';
import type { Box } from './shapes/label-placing.ts';
import type { Shape } from './shapes/shape.ts';
import type { View } from './shapes/view.ts';

export interface CloseUpOptions {
  readonly style: NumberStyle;
  readonly sizePx: number;
  readonly view: View;
}

/** One close-up: where on the ground frame what it shows lies, and how to draw it into a box of the screen. */
export interface CloseUp extends LeastSizes {
  readonly key: ChangePlace;
  readonly at: Point;
  /** Nothing where the box would show it hardly larger than the side view does. */
  draw(box: Box): readonly Shape[];
}

/** Makes one close-up; null where nothing of what it shows has changed. */
export type MakeCloseUp = (
  live: StandingBike,
  baseline: StandingBike,
  options: CloseUpOptions,
) => CloseUp | null;

/** A close-up is at least so many times larger than the side view. */
export const LEAST_TIMES = 1.4;
/** A change takes at least this many px of a close-up, as far as the largest scale allows. */
const CHANGE_PX = 7;
/** The largest scale, px to each mm. */
const MOST_SCALE = 18;
/** Free space round what is shown, as a part of it. */
export const AROUND = 0.16;
/** What a close-up has round its words and picture, in times of the text size. */
const BESIDE_PICTURE = 1;

/** Two lines of the heading: a name with its change, and the figure before and now. Empty for figures written alike. */
export function changeLines(
  name: string,
  before: number,
  now: number,
  quantity: 'length' | 'angle' | 'percent',
  style: NumberStyle,
): string[] {
  const change = shownChange(shownDifference(before, now, quantity, style), quantity, style);
  if (change.sign === 0) return [];
  const [from, to] = [before, now].map((value) => writeNumber(value, quantity, style));
  return [`${name} ${change.signed}`, `${from.digits} → ${to.text}`];
}

/** A heading, and its first line in few words, for a narrow picture. */
export interface Heading {
  readonly lines: readonly string[];
  readonly short: string;
}

/** A scale doubled as often as the change needs to be seen, so that it stays the same for most of a drag. */
export function doubledFor(whole: number, change: number): number {
  let scale = whole;
  while (scale * change < CHANGE_PX && 2 * scale <= MOST_SCALE) scale *= 2;
  return scale;
}

/** The page of a close-up in its box: as many lines of its heading as leave the picture its room. */
export function pageOf(
  box: Box,
  { lines, short }: Heading,
  sizePx: number,
  style: NumberStyle,
  view: View,
): CloseUpPage {
  if (isLow(box, leastSize([short], sizePx)))
    return { box, heading: [short], beside: true, sizePx, style, view };
  // The picture needs the room more than the lower lines do.
  const fits = (box.bottom - box.top) / (LINE * sizePx) - (LEAST_PICTURE + BESIDE_PICTURE) / LINE;
  const isWide = leastSize(lines, sizePx).widthPx <= box.right - box.left;
  const [first, ...others] = lines;
  const heading = [isWide ? first : short, ...others].slice(0, Math.max(1, Math.floor(fits)));
  return { box, heading, beside: false, sizePx, style, view };
}
