/** What of the side view is drawn over, in small squares, so that it is soon known how much something laid there would cover. */
import type { Point } from '../core/plane/point.ts';
import type { Box } from './shapes/label-placing.ts';
import type { PathShape, PathStep, Shape } from './shapes/shape.ts';
import { toScreen, type View } from './shapes/view.ts';

/** Side of a square, px. */
export const SQUARE = 4;
/** Corners of a drawn circle and of a curve. */
const ROUND = 32;
const CURVE = 8;

/** What is drawn over, and what may not be. */
export interface Drawn {
  /** Drawn over whole. */
  readonly filled: readonly Shape[];
  /** Drawn over by their strokes alone. */
  readonly lines: readonly Shape[];
  /** What must stay free, px. */
  readonly kept: readonly Box[];
}

/** The squares of the side view, in columns from the left and rows from the top. */
export interface Squares {
  readonly columns: number;
  readonly rows: number;
  /** How many of the squares from a column and a row on, so many wide and high, are drawn over; infinite where one must stay free. */
  covered(column: number, row: number, wide: number, high: number): number;
}

export function squaresOf(
  { filled, lines, kept }: Drawn,
  view: View,
  widthPx: number,
  heightPx: number,
): Squares {
  const columns = Math.max(1, Math.floor(widthPx / SQUARE));
  const rows = Math.max(1, Math.floor(heightPx / SQUARE));
  const grid: Grid = { columns, rows, drawn: new Uint8Array(columns * rows) };
  const parts = (shapes: readonly Shape[]) =>
    shapes.flatMap((shape) =>
      shape.kind !== 'path'
        ? []
        : outlines(shape).map((places) => ({
            places: places.map((place) => toScreen(view, place)),
            half: ((shape.widthMm ?? 0) * view.scale) / 2,
          })),
    );
  const whole = parts(filled);
  for (const { places, half } of [...whole, ...parts(lines)]) markLine(grid, places, half);
  for (const { places } of whole) markInside(grid, places);
  const drawn = sumsOf(grid);
  const free: Grid = { columns, rows, drawn: new Uint8Array(columns * rows) };
  for (const box of kept) markBox(free, box);
  const barred = sumsOf(free);
  return {
    columns,
    rows,
    covered: (column, row, wide, high) =>
      barred(column, row, wide, high) > 0 ? Infinity : drawn(column, row, wide, high),
  };
}

interface Grid {
  readonly columns: number;
  readonly rows: number;
  readonly drawn: Uint8Array;
}

/** A path's outlines, each as its corners. */
function outlines({ steps }: PathShape): Point[][] {
  const found: Point[][] = [];
  let now: Point[] = [];
  for (const step of steps) {
    if (step.op === 'move') {
      now = [{ x: step.x, y: step.y }];
      found.push(now);
    } else if (step.op === 'close') {
      if (now.length > 0) now.push(now[0]);
    } else now.push(...cornersOf(step, now.at(-1)));
  }
  return found;
}

function cornersOf(step: Exclude<PathStep, { op: 'move' | 'close' }>, from: Point | undefined): Point[] {
  if (step.op === 'line') return [{ x: step.x, y: step.y }];
  if (step.op === 'arc')
    return Array.from({ length: ROUND + 1 }, (_, i) => {
      const angle = step.from + (i / ROUND) * (step.to - step.from);
      return { x: step.cx + step.radius * Math.cos(angle), y: step.cy + step.radius * Math.sin(angle) };
    });
  const start = from ?? { x: step.x1, y: step.y1 };
  return Array.from({ length: CURVE }, (_, i) => {
    const t = (i + 1) / CURVE;
    const [a, b, c, d] = [(1 - t) ** 3, 3 * t * (1 - t) ** 2, 3 * t * t * (1 - t), t ** 3];
    return {
      x: a * start.x + b * step.x1 + c * step.x2 + d * step.x,
      y: a * start.y + b * step.y1 + c * step.y2 + d * step.y,
    };
  });
}

/** Marks what lies within `half` px of a line. */
function markLine(grid: Grid, places: readonly Point[], half: number): void {
  for (let i = 1; i < places.length; i++) {
    const [from, to] = [places[i - 1], places[i]];
    const apart = Math.max(SQUARE / 2, half);
    const steps = Math.max(1, Math.ceil(Math.hypot(to.x - from.x, to.y - from.y) / apart));
    for (let k = 0; k <= steps; k++) {
      const x = from.x + (k / steps) * (to.x - from.x);
      const y = from.y + (k / steps) * (to.y - from.y);
      markBox(grid, { left: x - half, top: y - half, right: x + half, bottom: y + half });
    }
  }
}

/** Marks between the crossings of each row's middle with an outline. */
function markInside(grid: Grid, places: readonly Point[]): void {
  const ys = places.map(({ y }) => y);
  const first = Math.max(0, Math.floor(Math.min(...ys) / SQUARE));
  const last = Math.min(grid.rows - 1, Math.floor(Math.max(...ys) / SQUARE));
  for (let row = first; row <= last; row++) {
    const y = (row + 0.5) * SQUARE;
    const crossings: number[] = [];
    for (let i = 0; i < places.length; i++) {
      const [a, b] = [places[i], places[(i + 1) % places.length]];
      if (a.y <= y !== b.y <= y) crossings.push(a.x + ((y - a.y) / (b.y - a.y)) * (b.x - a.x));
    }
    crossings.sort((a, b) => a - b);
    for (let i = 0; i + 1 < crossings.length; i += 2)
      markBox(grid, { left: crossings[i], top: y, right: crossings[i + 1], bottom: y });
  }
}

function markBox({ columns, rows, drawn }: Grid, { left, top, right, bottom }: Box): void {
  const [from, to] = [
    Math.max(0, Math.floor(left / SQUARE)),
    Math.min(columns, Math.floor(right / SQUARE) + 1),
  ];
  if (from >= to) return;
  const last = Math.min(rows - 1, Math.floor(bottom / SQUARE));
  for (let row = Math.max(0, Math.floor(top / SQUARE)); row <= last; row++)
    drawn.fill(1, row * columns + from, row * columns + to);
}

/** How many squares of a part of the grid are marked: sums from the upper left corner on, of which each part takes four. */
function sumsOf({ columns, rows, drawn }: Grid): Squares['covered'] {
  const wide = columns + 1;
  const sums = new Uint32Array(wide * (rows + 1));
  for (let row = 0; row < rows; row++) {
    let inRow = 0;
    for (let column = 0; column < columns; column++) {
      inRow += drawn[row * columns + column];
      sums[(row + 1) * wide + column + 1] = sums[row * wide + column + 1] + inRow;
    }
  }
  return (column, row, across, down) => {
    const [upper, lower] = [row * wide + column, (row + down) * wide + column];
    return sums[lower + across] - sums[upper + across] - sums[lower] + sums[upper];
  };
}
