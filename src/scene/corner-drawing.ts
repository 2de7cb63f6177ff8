/** The corner from above, as a sketch: the line of the bike as it is beside that of one that holds its attitude on the gas. */
import type { Point } from '../core/plane/point.ts';
import { HALF_TURN, type CornerSketch } from '../core/effects/corner-sketch.ts';
import type { LabelShape, LabelSpot, PathShape, Role, Scene } from './shapes/shape.ts';
import type { View } from './shapes/view.ts';

/** Steps of a line through half the corner; the straights beside it, as parts of the radius. */
const STEPS = 24;
const STRAIGHT = 0.3;
/** The gap between the lines is drawn so many times as wide, the most that keeps it within this part of the radius. */
const MAGNIFIED = [100, 50, 20, 10, 5, 2, 1] as const;
const MOST_GAP = 0.16;
const MARK_PX = 5;
/** Room for words about the lines, in heights of a word. */
const MARGIN = 3;
/** In a narrower picture the words at the gas would lie over the way in: they stand above the apex, px. */
const NARROW = 420;

/** How many times as wide as it is the gap is drawn. */
export function gapDrawn({ apex, entry, exit }: CornerSketch): number {
  const gap = Math.max(Math.abs(exit.radius - apex.radius), Math.abs(entry.radius - apex.radius));
  return MAGNIFIED.find((times) => times * gap <= MOST_GAP * apex.radius) ?? 1;
}

export interface CornerSize {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly textPx: number;
}

/** The scene, whose mm are px, for a place of that size. */
export function cornerDrawing(sketch: CornerSketch, size: CornerSize): { scene: Scene; view: View } {
  const { widthPx, heightPx, textPx } = size;
  const { apex, entry, exit, gasAt } = sketch;
  const times = gapDrawn(sketch);
  const drawn = (radius: number): number => apex.radius + times * (radius - apex.radius);
  const into = arc({ x: 0, y: 0 }, 0, -HALF_TURN, drawn(entry.radius)).reverse();
  const way = [straight(into[0], -HALF_TURN, -STRAIGHT * apex.radius), ...into];
  const holds = leaving(arc({ x: 0, y: 0 }, 0, HALF_TURN, apex.radius), apex.radius);
  const wide = leaving(arc({ x: 0, y: 0 }, 0, HALF_TURN, drawn(exit.radius)), apex.radius);
  const gas = at({ x: 0, y: 0 }, 0, gasAt, apex.radius);
  const all = [...way, ...holds, ...wide];
  const margin = MARGIN * textPx;
  const [left, right] = [Math.min(...all.map(({ x }) => x)), Math.max(...all.map(({ x }) => x))];
  const [low, high] = [Math.min(...all.map(({ y }) => y)), Math.max(...all.map(({ y }) => y))];
  const scale = Math.min((widthPx - 2 * margin) / (right - left), (heightPx - 2 * margin) / (high - low));
  const place = ({ x, y }: Point): Point => ({
    x: widthPx / 2 + scale * (x - (left + right) / 2),
    y: heightPx / 2 + scale * (y - (low + high) / 2),
  });
  const line = (role: Role, points: readonly Point[]): PathShape => ({
    kind: 'path',
    role,
    steps: points.map((point, i) => ({ op: i === 0 ? 'move' : 'line', ...place(point) })),
  });
  const words = (text: string, on: Point, spot: LabelSpot, down = 0, leader = false): LabelShape => ({
    kind: 'label',
    role: 'axisName',
    text,
    at: place(on),
    spot,
    shiftPx: { x: 0, y: down * textPx },
    sizePx: textPx,
    leader,
  });
  const mark = (on: Point, sign: 'dot' | 'ring') =>
    ({ kind: 'mark', role: 'curveMark', at: place(on), sign, radiusPx: MARK_PX }) as const;
  const isLater = gasAt > 0;
  const gasName = 'Gas can open here';
  const gasWords =
    widthPx < NARROW ? words(gasName, gas, 'above', -1.3, true) : words(gasName, gas, 'left', 1.6);
  return {
    scene: [
      {
        name: 'construction',
        ink: 1,
        shapes: [
          line('curveBaseline', holds),
          line('curveNow', way),
          line('curveNow', [{ x: 0, y: 0 }, ...wide]),
          mark(into[0], 'dot'),
          mark({ x: 0, y: 0 }, 'dot'),
          ...(isLater ? [mark(gas, 'ring')] : []),
        ],
      },
      {
        name: 'labels',
        ink: 1,
        shapes: [
          words('Entry', into[0], 'right'),
          words(isLater ? 'Apex' : 'Apex: gas opens', { x: 0, y: 0 }, 'above'),
          ...(isLater ? [gasWords] : []),
          words('Exit', wide[wide.length - 2], 'above', -0.5),
        ],
      },
    ],
    view: { scale: 1, turn: 0, xPx: 0, yPx: heightPx },
  };
}

/** Seen from above in a right-hand bend: x along the road at the apex, y to its outside negative. */
function at(from: Point, heading: number, turn: number, radius: number): Point {
  return {
    x: from.x + radius * (Math.sin(heading + turn) - Math.sin(heading)),
    y: from.y - radius * (Math.cos(heading) - Math.cos(heading + turn)),
  };
}

function arc(from: Point, heading: number, turn: number, radius: number): Point[] {
  return Array.from({ length: STEPS + 1 }, (_, i) => at(from, heading, (turn * i) / STEPS, radius));
}

function straight(from: Point, heading: number, along: number): Point {
  return { x: from.x + along * Math.cos(heading), y: from.y - along * Math.sin(heading) };
}

function leaving(points: readonly Point[], radius: number): Point[] {
  return [...points, straight(points[points.length - 1], HALF_TURN, STRAIGHT * radius)];
}
