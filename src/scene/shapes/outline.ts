/** Drawing outlines in a part's own coordinates and placing them on the ground frame. */
import type { Point } from '../../core/plane/point.ts';
import type { PathShape, PathStep, Role } from './shape.ts';

/** Where a part's own axes lie on the ground frame: its origin in mm, and its turn counter-clockwise in radians. */
export interface Placement {
  readonly x: number;
  readonly y: number;
  readonly turn: number;
}

const ON_GROUND: Placement = { x: 0, y: 0, turn: 0 };

/** A pen that draws in a part's own coordinates. Every method returns the pen. */
export interface Pen {
  move(x: number, y: number): Pen;
  line(...points: number[]): Pen;
  curve(x1: number, y1: number, x2: number, y2: number, x: number, y: number): Pen;
  arc(cx: number, cy: number, radius: number, from: number, to: number): Pen;
  circle(cx: number, cy: number, radius: number): Pen;
  close(): Pen;
  shape(role: Role, options?: { readonly widthMm?: number; readonly arrows?: 'end' | 'both' }): PathShape;
}

/** A pen on a placement. `line` takes pairs x, y, …; arcs follow the convention of PathStep. */
export function pen(place: Placement = ON_GROUND): Pen {
  const steps: PathStep[] = [];
  const c = Math.cos(place.turn);
  const s = Math.sin(place.turn);
  const px = (x: number, y: number) => place.x + c * x - s * y;
  const py = (x: number, y: number) => place.y + s * x + c * y;
  const self: Pen = {
    move(x, y) {
      steps.push({ op: 'move', x: px(x, y), y: py(x, y) });
      return self;
    },
    line(...points) {
      for (let i = 0; i + 1 < points.length; i += 2)
        steps.push({ op: 'line', x: px(points[i], points[i + 1]), y: py(points[i], points[i + 1]) });
      return self;
    },
    curve(x1, y1, x2, y2, x, y) {
      steps.push({
        op: 'curve',
        x1: px(x1, y1),
        y1: py(x1, y1),
        x2: px(x2, y2),
        y2: py(x2, y2),
        x: px(x, y),
        y: py(x, y),
      });
      return self;
    },
    arc(cx, cy, radius, from, to) {
      steps.push({
        op: 'arc',
        cx: px(cx, cy),
        cy: py(cx, cy),
        radius,
        from: from + place.turn,
        to: to + place.turn,
      });
      return self;
    },
    circle(cx, cy, radius) {
      self.move(cx + radius, cy);
      self.arc(cx, cy, radius, 0, 2 * Math.PI);
      return self.close();
    },
    close() {
      steps.push({ op: 'close' });
      return self;
    },
    shape: (role, options = {}) => ({ kind: 'path', role, steps, ...options }),
  };
  return self;
}

/** A placement whose x axis points from one place to another. */
export function along(from: Point, to: Point): Placement {
  return { x: from.x, y: from.y, turn: Math.atan2(to.y - from.y, to.x - from.x) };
}

/** A straight line as a shape. */
export function segment(
  role: Role,
  from: Point,
  to: Point,
  options: { arrows?: 'end' | 'both' } = {},
): PathShape {
  return pen().move(from.x, from.y).line(to.x, to.y).shape(role, options);
}

/** A line carried on from `from` through `to` until the given x, or a little past `to`. */
export function carriedOn(role: Role, from: Point, to: Point, untilX: number): PathShape {
  const dx = to.x - from.x;
  const dy = to.y - from.y;
  const part = Math.abs(dx) > 1e-6 ? Math.max(1.1, (untilX - from.x) / dx) : 1.1;
  return segment(role, from, { x: from.x + part * dx, y: from.y + part * dy });
}
