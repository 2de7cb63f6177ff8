/** A window on the side view that shows a part of the bike larger, with a heading, its scale and what the lines mean. */
import type { Point } from '../core/plane/point.ts';
import { shownUnit } from '../core/units/all-quantities.ts';
import type { NumberStyle } from '../core/units/number-style.ts';
import type { UnitSystem } from '../core/units/quantity.ts';
import { writeShort } from '../words/write-short.ts';
import { clipArea, clipLine, type Area } from './shapes/clip.ts';
import type { LeastSize, LeastSizes } from './close-up-place.ts';
import type { Box } from './shapes/label-placing.ts';
import { pen } from './shapes/outline.ts';
import type { MarkShape, Role, Shape } from './shapes/shape.ts';
import { textWidthPx } from './shapes/text-width.ts';
import { toGround, type View } from './shapes/view.ts';

/** Height of a line of words, as a part of the text size. */
export const LINE = 1.4;
const INSET = 6;
/** Above and below the words of a close-up that is as low as can be, px in all, and the height of a line of them. */
const LOW_INSET = 3;
const LOW_LINE = 1.28;
/** Lengths that a scale's bar may stand for, in the user's unit, longest first, and how long it may be, px. */
const BARS: Readonly<Record<UnitSystem, readonly number[]>> = {
  metric: [500, 200, 100, 50, 20, 10, 5, 2, 1],
  inch: [20, 10, 5, 2, 1, 0.5, 0.2, 0.1, 0.05],
};
const LONGEST_BAR = 56;
/** Length of the strokes that say which line is which, px. */
const SWATCH = 22;
/** Below so many times larger, tenths are written. */
const FEW = 3;
/** What the scale takes at the foot of a picture: a line of words and its bar, in times of the text size. */
export const SCALE_ROOM = 1.7;
/** The least height of a picture, in times of the text size. */
export const LEAST_PICTURE = 3;
/** Width of a picture with its words beside it, px. */
const PICTURE_BESIDE = 44;
/** How far above the foot of a low close-up the middle of its scale's words stands, in times of the text size. */
const SCALE_ABOVE_BAR = 0.75;
/** How much wider bold words are. */
const BOLD = 1.08;
/** The lines' meaning is written where the picture keeps at least this height, in times of the text size. */
const ROOM_FOR_MEANING = 4.5;

/** What is shown: the words above, first the boldest, and the part of the bike. */
export interface CloseUpPage {
  readonly box: Box;
  readonly heading: readonly string[];
  /** Whether the words stand beside the picture, which then has the whole height. */
  readonly beside: boolean;
  readonly sizePx: number;
  readonly style: NumberStyle;
  readonly view: View;
}

/** The picture's part of a close-up, px of the screen. */
export interface CloseUpFrame {
  readonly widthPx: number;
  readonly heightPx: number;
  /** What is shown: `place` of the part, mm, stands in the middle, at `scale` px to each mm; `xPart` and `yPart` move the middle. */
  look(place: Point, scale: number, xPart?: number, yPart?: number): Drawer;
}

/** Draws in the part's own mm, cut off at the window's edge. */
export interface Drawer {
  readonly shapes: readonly Shape[];
  line(role: Role, ...places: Point[]): void;
  arrow(role: Role, from: Point, to: Point): void;
  area(role: Role, places: readonly Point[]): void;
  mark(role: Role, at: Point, sign: MarkShape['sign'], radiusPx: number): void;
  /** Writes the scale into a corner below, or under the words beside the picture, as a bar and as how many times larger than the side view. */
  finish(corner: 'left' | 'right'): void;
}

/** The least sizes of a close-up with a heading, whose first line has a shorter form. */
export function leastSizes(lines: readonly string[], short: string, sizePx: number): LeastSizes {
  return {
    least: leastSize(lines, sizePx),
    narrow: leastSize([short, ...lines.slice(1)], sizePx),
    brief: leastSize([short], sizePx),
    low: {
      widthPx: wordsBesidePx(short, sizePx) + PICTURE_BESIDE,
      heightPx: 2 * LOW_LINE * sizePx + LOW_INSET,
    },
  };
}

/** Width of the words beside a picture with the space about them, px; the scale's are shorter. */
function wordsBesidePx(short: string, sizePx: number): number {
  return BOLD * textWidthPx(short, sizePx) + 2 * INSET;
}

/** The size that holds a heading, of which lines below the second may be left out, and a picture under it. */
export function leastSize(heading: readonly string[], sizePx: number): LeastSize {
  return {
    widthPx: BOLD * Math.max(...heading.map((text) => textWidthPx(text, sizePx))) + 2 * INSET,
    heightPx: (Math.min(2, heading.length) * LINE + LEAST_PICTURE) * sizePx + 2 * INSET,
  };
}

export function closeUpFrame({ box, heading, beside, sizePx, style, view }: CloseUpPage): CloseUpFrame {
  const line = LINE * sizePx;
  const room = box.bottom - box.top - 2 * INSET - heading.length * line - line;
  const explained = !beside && room > ROOM_FOR_MEANING * sizePx;
  const besidePx = beside ? wordsBesidePx(heading[0], sizePx) : 0;
  const picture: Box = {
    left: box.left + 2 + besidePx,
    top: beside ? box.top + 2 : box.top + INSET + heading.length * line,
    right: box.right - 2,
    bottom: box.bottom - 2 - (explained ? line + 3 : 0),
  };
  const on = (xPx: number, yPx: number): Point => toGround(view, { x: xPx, y: yPx });
  const corners = [
    on(box.left, box.top),
    on(box.right, box.top),
    on(box.right, box.bottom),
    on(box.left, box.bottom),
  ];
  const words = (text: string, xPx: number, yPx: number, bold = false, backed = false): Shape => ({
    kind: 'label',
    role: bold ? 'zoneName' : 'axisName',
    text,
    at: on(xPx, yPx),
    spot: 'centre',
    shiftPx: { x: 0, y: 0 },
    sizePx,
    leader: false,
    ...(backed && { backed }),
  });
  const stroke = (role: Role, x1: number, y1: number, x2: number, y2: number): Shape => {
    const [from, to] = [on(x1, y1), on(x2, y2)];
    return pen().move(from.x, from.y).line(to.x, to.y).shape(role);
  };
  const wordsX = beside ? box.left + besidePx / 2 : (box.left + box.right) / 2;
  const firstLine = box.top + (beside ? LOW_INSET / 2 : INSET) + line / 2;
  const page: Shape[] = [
    pen()
      .move(corners[0].x, corners[0].y)
      .line(...corners.slice(1).flatMap(({ x, y }) => [x, y]))
      .close()
      .shape('closeUp'),
    ...heading.map((text, i) => words(text, wordsX, firstLine + i * line, i === 0)),
    ...(explained ? meanings() : []),
  ];

  function meanings(): Shape[] {
    const y = box.bottom - INSET - line / 2;
    const [before, now] = ['before', 'now'];
    const wide = (text: string) => textWidthPx(text, sizePx) + 8;
    const whole = 2 * SWATCH + wide(before) + wide(now) + 10;
    const left = (box.left + box.right - whole) / 2;
    const second = left + SWATCH + wide(before) + 10;
    return [
      stroke('shadow', left, y, left + SWATCH, y),
      words(before, left + SWATCH + wide(before) / 2, y),
      stroke('trailLine', second, y, second + SWATCH, y),
      words(now, second + SWATCH + wide(now) / 2, y),
    ];
  }

  const widthPx = picture.right - picture.left;
  const heightPx = picture.bottom - picture.top;
  return {
    widthPx,
    heightPx,
    look(place, scale, xPart = 0.5, yPart = 0.5) {
      const left = place.x - (xPart * widthPx) / scale;
      const bottom = place.y - (yPart * heightPx) / scale;
      const [right, top] = [left + widthPx / scale, bottom + heightPx / scale];
      const seen: Area = [
        { x: left, y: bottom },
        { x: right, y: bottom },
        { x: right, y: top },
        { x: left, y: top },
      ];
      const shapes: Shape[] = [...page];
      const at = (p: Point): Point =>
        on(picture.left + (p.x - left) * scale, picture.bottom - (p.y - bottom) * scale);
      const strokes = (places: readonly Point[]) =>
        places.slice(1).flatMap((to, i) => {
          const part = clipLine(places[i], to, seen);
          return part === null ? [] : [{ from: at(part.from), to: at(part.to) }];
        });
      return {
        shapes,
        line(role, ...places) {
          const drawn = pen();
          const parts = strokes(places);
          for (const { from, to } of parts) drawn.move(from.x, from.y).line(to.x, to.y);
          if (parts.length > 0) shapes.push(drawn.shape(role));
        },
        arrow(role, from, to) {
          for (const part of strokes([from, to]))
            shapes.push(
              pen().move(part.from.x, part.from.y).line(part.to.x, part.to.y).shape(role, { arrows: 'end' }),
            );
        },
        area(role, places) {
          const isTurned = turnsClockwise(places);
          const [first, ...others] = clipArea(isTurned ? [...places].reverse() : places, seen).map(at);
          if (others.length < 2) return;
          shapes.push(
            pen()
              .move(first.x, first.y)
              .line(...others.flatMap(({ x, y }) => [x, y]))
              .close()
              .shape(role),
          );
        },
        mark(role, place_, sign, radiusPx) {
          const isSeen = place_.x > left && place_.x < right && place_.y > bottom && place_.y < top;
          if (isSeen) shapes.push({ kind: 'mark', role, at: at(place_), sign, radiusPx });
        },
        finish(corner) {
          const each = 1 / shownUnit('length', style.system).perMetric;
          const bars = BARS[style.system].map((length) => length * each);
          const bar = bars.find((mm) => mm * scale <= LONGEST_BAR) ?? bars[bars.length - 1];
          const text = `${writeShort(bar, 'length', style)} ${timesWords(scale / view.scale, style)}`;
          const wide = textWidthPx(text, sizePx) + 4;
          const y = picture.bottom - (beside ? SCALE_ABOVE_BAR : 0.6) * sizePx;
          const atCorner = corner === 'left' ? picture.left + INSET : picture.right - INSET - wide;
          const start = beside ? box.left + INSET : atCorner;
          // Beside a picture the bar lies under its words: above them it would look like a line under the heading.
          const barY = beside ? picture.bottom - 1 : y - 0.6 * sizePx - 2;
          shapes.push(
            words(text, start + wide / 2, y, false, !beside),
            stroke('ground', start, barY, start + bar * scale, barY),
          );
        },
      };
    },
  };
}

/** How many times larger than the side view, such as "×3". */
function timesWords(times: number, { decimal }: NumberStyle): string {
  return `×${times < FEW ? times.toFixed(1).replace('.', decimal) : Math.round(times)}`;
}

function turnsClockwise(places: readonly Point[]): boolean {
  let twice = 0;
  for (const [i, a] of places.entries()) {
    const b = places[(i + 1) % places.length];
    twice += a.x * b.y - b.x * a.y;
  }
  return twice < 0;
}
