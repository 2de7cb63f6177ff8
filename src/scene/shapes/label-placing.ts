/** Keeping labels apart: each moves to the nearest free spot about its place, the most important first. */
import type { Point } from '../../core/plane/point.ts';
import type { LabelShape, LabelSpot, Role } from './shape.ts';
import { textWidthPx } from './text-width.ts';
import { toScreen, type View } from './view.ts';

/** A label before it has found its spot. Earlier ones in a list have the first choice. */
export interface WantedLabel {
  readonly role: Role;
  readonly text: string;
  readonly at: Point;
  readonly spot: LabelSpot;
  readonly sizePx: number;
  /** Where the first try lies, px right and down of the place; for words beside a slanting line. */
  readonly startPx?: Point;
  /**
   * For the name of an area, which means nothing beside it: moved along the area only, which rises to the right by this
   * much, and left out where it finds no spot there.
   */
  readonly along?: number;
  /** How far above its place that area goes on, mm. */
  readonly above?: number;
  readonly backed?: boolean;
  /** Left out where it finds no spot near: a name that may be missing rather than hang on a long line. */
  readonly near?: boolean;
}

export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** Height of a line as a part of the text size, and what the box has beside the words in all, px. */
const LINE_HEIGHT = 1.35;
const BESIDE = 12;
/** Free space kept between labels and to the window's edge, px. */
const CLEARANCE = 3;
/** How far a label may wander from its place, px, and in what steps. */
const FARTHEST = 182;
const STEP = 13;
const FINE_STEP = STEP / 3;
const ROUNDING = 1e-9;
/** How far a label goes to keep clear of what it may lie over if need be, px. */
const FAR_ENOUGH = 130;
/** How far the name of an area moves along it, px. */
const ALONG_FARTHEST = 130;
/** A label further from its place than this gets a line back to it, px. */
const LEADER_FROM = 20;

/** The box of words of a size at a screen place, px; `shift` moves it. */
export function labelBox(text: string, sizePx: number, spot: LabelSpot, screen: Point, shift: Point): Box {
  const width = textWidthPx(text, sizePx) + BESIDE;
  const height = sizePx * LINE_HEIGHT;
  const gap = 8;
  const x = screen.x + shift.x;
  const y = screen.y + shift.y;
  const left = spot === 'right' ? x + gap : spot === 'left' ? x - gap - width : x - width / 2;
  const top = spot === 'above' ? y - gap - height : spot === 'below' ? y + gap : y - height / 2;
  return { left, top, right: left + width, bottom: top + height };
}

function apart(a: Box, b: Box): boolean {
  return (
    a.right + CLEARANCE <= b.left ||
    b.right + CLEARANCE <= a.left ||
    a.bottom + CLEARANCE <= b.top ||
    b.bottom + CLEARANCE <= a.top
  );
}

/** How far the name of an area may go up in it, px. */
function aboveOf({ above, sizePx }: WantedLabel, view: View): number {
  return above === undefined ? 0 : above * view.scale - sizePx * LINE_HEIGHT;
}

const NO_SHIFT: Point = { x: 0, y: 0 };

/** Shifts tried, nearest first: straight and slanting, out to the farthest. */
const SHIFTS: readonly Point[] = (() => {
  const all: Point[] = [{ x: 0, y: 0 }];
  for (let r = STEP; r <= FARTHEST; r += STEP)
    for (const [x, y] of [
      [0, -1],
      [0, 1],
      [1, 0],
      [-1, 0],
      [0.8, -0.6],
      [-0.8, -0.6],
      [0.8, 0.6],
      [-0.8, 0.6],
    ])
      all.push({ x: x * r, y: y * r });
  return all;
})();

const NEAR_SHIFTS = SHIFTS.filter(({ x, y }) => Math.hypot(x, y) <= FAR_ENOUGH);

/** From 0 on, px. */
function stepsTo(farthest: number, step = STEP): number[] {
  return Array.from({ length: Math.max(0, Math.floor(farthest / step + ROUNDING)) + 1 }, (_, i) => i * step);
}

/** A little forward along an area that rises by so much to the right, as high up in it as it goes, then far back along it. */
function shiftsAlong(rise: number, abovePx: number): Point[] {
  return [
    ...stepsTo(abovePx).flatMap((up) => stepsTo(2 * STEP).map((x) => ({ x, y: -rise * x - up }))),
    ...stepsTo(ALONG_FARTHEST).map((x) => ({ x: -x, y: rise * x })),
  ];
}

/**
 * The labels with their spots found, none over another, over `taken` or past the window's edge, and off what is
 * `avoided` where there is room near. A label whose place is outside the window, or that finds no free spot, is left
 * out rather than laid over another.
 */
export function placeLabels(
  wanted: readonly WantedLabel[],
  view: View,
  widthPx: number,
  heightPx: number,
  taken: readonly Box[] = [],
  avoided: readonly Box[] = [],
): LabelShape[] {
  const boxes: Box[] = [...taken];
  const placed: LabelShape[] = [];
  for (const label of wanted) {
    const screen = toScreen(view, label.at);
    if (screen.x < 0 || screen.y < 0 || screen.x > widthPx || screen.y > heightPx) continue;
    const start = label.startPx ?? NO_SHIFT;
    const spotOf = (steps: readonly Point[], among: readonly Box[]) => {
      for (const step of steps) {
        const shiftPx = { x: start.x + step.x, y: start.y + step.y };
        const box = labelBox(label.text, label.sizePx, label.spot, screen, shiftPx);
        if (box.left < CLEARANCE || box.top < CLEARANCE) continue;
        if (box.right > widthPx - CLEARANCE || box.bottom > heightPx - CLEARANCE) continue;
        if (among.every((other) => apart(box, other))) return { step, shiftPx, box };
      }
      return null;
    };
    const first = labelBox(label.text, label.sizePx, label.spot, screen, start);
    const beyond = first.right - (widthPx - CLEARANCE);
    // Words beside a line that reach beyond the window's right edge go back by no more than that first, and down if need be.
    const shifts = (all: readonly Point[]) =>
      label.startPx !== undefined && beyond > 0
        ? [...stepsTo(2 * STEP, FINE_STEP).map((y) => ({ x: -beyond, y })), ...all]
        : all;
    const found =
      label.along === undefined
        ? ((avoided.length > 0 ? spotOf(shifts(NEAR_SHIFTS), [...boxes, ...avoided]) : null) ??
          spotOf(shifts(label.near ? NEAR_SHIFTS : SHIFTS), boxes))
        : spotOf(shiftsAlong(label.along, aboveOf(label, view)), boxes);
    if (found === null) continue;
    boxes.push(found.box);
    placed.push({
      kind: 'label',
      role: label.role,
      text: label.text,
      at: label.at,
      spot: label.spot,
      shiftPx: found.shiftPx,
      sizePx: label.sizePx,
      ...(label.backed && { backed: true }),
      leader: label.along === undefined && Math.hypot(found.step.x, found.step.y) > LEADER_FROM,
    });
  }
  return placed;
}
