/** What changed at the front patch and about the instant centre, larger than the side view shows it, before and now. */
import type { Absent } from '../core/readings/absent.ts';
import { antiSquat } from '../core/readings/anti-squat.ts';
import { groundTrail } from '../core/readings/trail.ts';
import { throttleIsClosed } from '../core/riding/throttle-closed.ts';
import type { StandingBike } from '../core/riding/stand-bike.ts';
import { degrees } from '../core/units/convert.ts';
import { shownDifference, writeChange, writeNumber, type NumberStyle } from '../core/units/number-style.ts';
import type { Point } from '../core/plane/point.ts';
import { isLess } from '../core/units/least-told.ts';
import { shownChange } from '../words/shown-change.ts';
import {
  closeUpFrame,
  LEAST_PICTURE,
  leastSize,
  LINE,
  SCALE_ROOM,
  type CloseUpPage,
  type Drawer,
} from './close-up-frame.ts';
import type { LeastSize } from './close-up-place.ts';
import { instantCentreShown, trailPlaces } from './construction/construction-drawing.ts';
import type { Box } from './shapes/label-placing.ts';
import type { Role, Shape } from './shapes/shape.ts';
import { squatConstruction } from './construction/squat-construction.ts';
import type { View } from './shapes/view.ts';

export type CloseUpKey = 'front' | 'rear';

export interface CloseUpOptions {
  readonly style: NumberStyle;
  readonly sizePx: number;
  readonly view: View;
}

/** One close-up: where on the ground frame what it shows lies, and how to draw it into a box of the screen. */
export interface CloseUp {
  readonly key: CloseUpKey;
  readonly at: Point;
  readonly least: LeastSize;
  /** The sizes for the heading in few words, and for one line of them. */
  readonly narrow: LeastSize;
  readonly brief: LeastSize;
  /** Nothing where the box would show it hardly larger than the side view does. */
  draw(box: Box): readonly Shape[];
}

/** A close-up is at least so many times larger than the side view. */
const LEAST_TIMES = 1.4;
/** Instant centres far apart are shown no larger, or a little smaller, without the bike over them. */
const LEAST_OF_CENTRES = 0.6;
/** A change takes at least this many px of a close-up, as far as the largest scale allows. */
const CHANGE_PX = 7;
/** The two instant centres lie so far apart, as a part of the picture's width and height, at the first of these scales that holds them, in times of the side view's. */
const CENTRES_APART = 0.45;
const TIMES = [8, 5, 3, 2, LEAST_TIMES];
/** The largest scale, px to each mm. */
const MOST_SCALE = 18;
/** Free space round what is shown, as a part of it. */
const AROUND = 0.16;
/** What a close-up has round its words and picture, in times of the text size. */
const BESIDE_PICTURE = 1;
/** How far below the ground the change of the trail is drawn, px. */
const BELOW_PX = 9;
/** The part of a picture that lies below the ground at most. */
const MOST_BELOW = 0.55;

/** The close-ups of a bike that stands differently from its baseline by what a gauge shows. */
export function closeUps(live: StandingBike, baseline: StandingBike, options: CloseUpOptions): CloseUp[] {
  return [frontCloseUp(live, baseline, options), rearCloseUp(live, baseline, options)].filter(
    (found) => found !== null,
  );
}

/** Two lines of the heading: a name with its change, and the figure before and now. Empty for figures written alike. */
function changeLines(
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

/** The change of a figure in brackets, such as " (−1.2)"; empty where no gauge shows it. */
export function changeInBrackets(
  before: number | Absent,
  now: number,
  quantity: 'length' | 'angle' | 'percent',
  style: NumberStyle,
): string {
  if (typeof before !== 'number' || isLess(now - before, quantity)) return '';
  return ` (${writeChange(shownDifference(before, now, quantity, style), quantity, style).digits})`;
}

/** A heading, and its first line in few words, for a narrow picture. */
interface Heading {
  readonly lines: readonly string[];
  readonly short: string;
}

function frontCloseUp(
  live: StandingBike,
  baseline: StandingBike,
  { style, sizePx, view }: CloseUpOptions,
): CloseUp | null {
  const trailOf = ({ machine, rake, offset }: StandingBike) => groundTrail(machine.frontRadius, rake, offset);
  const [before, now] = [trailOf(baseline), trailOf(live)];
  const [rakeBefore, rakeNow] = [degrees(baseline.rake), degrees(live.rake)];
  const isSame = isLess(now - before, 'length');
  if (isSame && isLess(rakeNow - rakeBefore, 'angle')) return null;
  const trailWords = changeLines('Trail', before, now, 'length', style);
  const rakeWords = changeLines('Rake', rakeBefore, rakeNow, 'angle', style);
  const lines = isSame ? rakeWords : [...trailWords, ...rakeWords.slice(0, 1)];
  const heading = { lines, short: lines[0] };
  return {
    key: 'front',
    at: { x: live.pose.wheelbase, y: 0 },
    least: leastSize(heading.lines, sizePx),
    narrow: leastSize([heading.short, ...lines.slice(1)], sizePx),
    brief: leastSize([heading.short], sizePx),
    draw(box) {
      const frame = closeUpFrame(pageOf(box, heading, sizePx, style, view));
      const [least, most] = [Math.min(0, before, now), Math.max(0, before, now)];
      const whole = frame.widthPx / ((1 + 2 * AROUND) * Math.max(most - least, 1));
      const scale = isSame ? whole : doubledFor(whole, Math.abs(now - before));
      if (scale < LEAST_TIMES * view.scale) return [];
      // The whole triangle where the change shows in it; otherwise the foot of the axis, with the patch to one side.
      const middle = scale > whole ? (before + now) / 2 : (least + most) / 2;
      const aside = scale > whole ? 0.8 : 0.5;
      // The scale and the change lie below the ground, where the triangle is not.
      const belowPx = Math.max(2.4 * BELOW_PX, SCALE_ROOM * sizePx);
      const ground = Math.min(MOST_BELOW, belowPx / frame.heightPx);
      const drawer = frame.look({ x: middle, y: 0 }, scale, aside, ground);
      const reach = frame.widthPx / scale;
      drawTriangle(drawer, baseline, 'shadowBody', 'shadow');
      drawTriangle(drawer, live, 'trailTriangle', 'steeringAxis');
      drawer.line('ground', { x: middle - reach, y: 0 }, { x: middle + reach, y: 0 });
      drawer.line('trailLine', { x: 0, y: 0 }, { x: now, y: 0 });
      if (!isSame) {
        const y = -BELOW_PX / scale;
        drawer.line('highlight', { x: before, y: 0 }, { x: now, y: 0 });
        drawer.arrow('dimension', { x: before, y }, { x: now, y });
      }
      drawer.mark('axle', { x: 0, y: 0 }, 'dot', 3.5);
      drawer.finish('left');
      return drawer.shapes;
    },
  };
}

/** A scale doubled as often as the change needs to be seen, so that it stays the same for most of a drag. */
function doubledFor(whole: number, change: number): number {
  let scale = whole;
  while (scale * change < CHANGE_PX && 2 * scale <= MOST_SCALE) scale *= 2;
  return scale;
}

function pageOf(
  box: Box,
  { lines, short }: Heading,
  sizePx: number,
  style: NumberStyle,
  view: View,
): CloseUpPage {
  // The picture needs the room more than the lower lines do.
  const fits = (box.bottom - box.top) / (LINE * sizePx) - (LEAST_PICTURE + BESIDE_PICTURE) / LINE;
  const isWide = leastSize(lines, sizePx).widthPx <= box.right - box.left;
  const [first, ...others] = lines;
  const heading = [isWide ? first : short, ...others].slice(0, Math.max(1, Math.floor(fits)));
  return { box, heading, sizePx, style, view };
}

/** The trail triangle and the axis beyond it, laid with the patch at the origin. */
function drawTriangle(drawer: Drawer, standing: StandingBike, area: Role, axis: Role): void {
  const { axisGround, patch, top, head } = trailPlaces(standing);
  const fromPatch = ({ x, y }: Point): Point => ({ x: x - patch.x, y });
  drawer.area(area, [axisGround, patch, top].map(fromPatch));
  drawer.line(axis, fromPatch(axisGround), fromPatch(head));
}

function rearCloseUp(
  live: StandingBike,
  baseline: StandingBike,
  { style, sizePx, view }: CloseUpOptions,
): CloseUp | null {
  const [before, now] = [antiSquat.read(baseline), antiSquat.read(live)];
  if (typeof before !== 'number' || typeof now !== 'number' || throttleIsClosed(live)) return null;
  const [angleBefore, angleNow] = [degrees(baseline.swingarmAngle), degrees(live.swingarmAngle)];
  const isSame = isLess(now - before, 'percent');
  if (isSame && isLess(angleNow - angleBefore, 'angle')) return null;
  const centres = [instantCentreShown(baseline), instantCentreShown(live)];
  const [centreBefore, centreNow] = centres;
  if (centreBefore === null || centreNow === null) return null;
  const squatWords = changeLines('Anti-squat', before, now, 'percent', style);
  const angleWords = changeLines('Swingarm', angleBefore, angleNow, 'angle', style);
  const lines = isSame ? angleWords : [...squatWords, ...angleWords.slice(0, 1)];
  const points = writeChange(shownDifference(before, now, 'percent', style), 'percent', style);
  // The label of the squat line has the sign of its figure beside it.
  const heading = { lines, short: isSame ? lines[0] : `Anti-squat ${points.digits}` };
  return {
    key: 'rear',
    at: centreNow,
    least: leastSize(heading.lines, sizePx),
    narrow: leastSize([heading.short, ...lines.slice(1)], sizePx),
    brief: leastSize([heading.short], sizePx),
    draw(box) {
      const frame = closeUpFrame(pageOf(box, heading, sizePx, style, view));
      const across = Math.abs(centreNow.x - centreBefore.x) / frame.widthPx;
      const up = Math.abs(centreNow.y - centreBefore.y) / frame.heightPx;
      const most = CENTRES_APART / (view.scale * Math.max(across, up));
      const times = TIMES.find((each) => each <= most) ?? most;
      if (times < LEAST_OF_CENTRES) return [];
      const scale = times * view.scale;
      const middle = { x: (centreBefore.x + centreNow.x) / 2, y: (centreBefore.y + centreNow.y) / 2 };
      const drawer = frame.look(middle, scale);
      drawLines(drawer, baseline, centreBefore, true);
      drawLines(drawer, live, centreNow, false);
      drawer.arrow('dimension', centreBefore, centreNow);
      // Below the squat line, which rises to the right, nothing is drawn.
      drawer.finish('right');
      return drawer.shapes;
    },
  };
}

/** Swingarm line, upper run and squat line through the instant centre, from the rear patch. */
function drawLines(drawer: Drawer, standing: StandingBike, centre: Point, isBefore: boolean): void {
  const { swingarm, chain } = squatConstruction(standing);
  const beyond = { x: 2 * centre.x, y: 2 * centre.y };
  const role = (live: Role): Role => (isBefore ? 'shadow' : live);
  drawer.line(role('swingarmLine'), swingarm.from, centre);
  if (chain !== null) drawer.line(role('chainLine'), chain.from, centre);
  drawer.line(role('squatLine'), { x: 0, y: 0 }, beyond);
  drawer.mark(isBefore ? 'shadow' : 'axle', standing.pose.pivot, 'dot', 4);
  drawer.mark(role('instantCentre'), centre, 'ring', 6);
}
