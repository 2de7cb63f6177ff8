/** Wheel and swingarm cut free of one another: six equations of equilibrium for six unknown forces, solved as they stand. */
import type { Point } from '../../src/core/plane/point.ts';

/** A line of force: a point on it and its direction. */
export interface ForceLine {
  readonly at: Point;
  readonly way: Point;
}

/** What turns the wheel against the ground: a pull along a run to the frame, a couple held by the arm, or a stay on a bracket. */
export type Torque =
  | { readonly by: 'run'; readonly line: ForceLine }
  | { readonly by: 'armCouple' }
  | { readonly by: 'stay'; readonly line: ForceLine };

export interface CutFree {
  readonly axle: Point;
  readonly pivot: Point;
  readonly torque: Torque;
}

function solved(rows: number[][], right: number[]): number[] {
  const n = right.length;
  const m = rows.map((row, i) => [...row, right[i]]);
  for (let c = 0; c < n; c++) {
    const pivot = m
      .slice(c)
      .reduce((best, row, i) => (Math.abs(row[c]) > Math.abs(m[best][c]) ? c + i : best), c);
    [m[c], m[pivot]] = [m[pivot], m[c]];
    for (let r = 0; r < n; r++) {
      if (r === c) continue;
      const factor = m[r][c] / m[c][c];
      for (let k = c; k <= n; k++) m[r][k] -= factor * m[c][k];
    }
  }
  return m.map((row, i) => row[n] / row[i]);
}

/**
 * Load at the rear patch (0, 0), upward, that keeps wheel and arm in equilibrium under a horizontal ground force
 * `along` (positive forward) with no spring force at all. Unknown: that load, the torque's size, the axle's pin force
 * on the wheel and the pivot's on the arm. A stay's bracket counts as part of the wheel, as a locked brake does.
 */
export function loadWithoutSpring({ axle, pivot, torque }: CutFree, along: number): number {
  const about = (at: Point, centre: Point, way: Point): number =>
    (at.x - centre.x) * way.y - (at.y - centre.y) * way.x;
  const patch = { x: 0, y: 0 };
  const up = { x: 0, y: 1 };
  const line = torque.by === 'armCouple' ? null : torque.line;
  const length = line === null ? 1 : Math.hypot(line.way.x, line.way.y);
  const way = line === null ? { x: 0, y: 0 } : { x: line.way.x / length, y: line.way.y / length };
  const onWheel = line === null ? 1 : about(line.at, axle, way);
  const onArm = line === null ? -1 : 0;
  // Unknowns: load, torque or pull, axle pin x and y on the wheel, pivot pin x and y on the arm.
  const rows = [
    [0, way.x, 1, 0, 0, 0],
    [1, way.y, 0, 1, 0, 0],
    [about(patch, axle, up), onWheel, 0, 0, 0, 0],
    [0, 0, -1, 0, 1, 0],
    [0, 0, 0, -1, 0, 1],
    [0, onArm, -about(axle, pivot, { x: 1, y: 0 }), -about(axle, pivot, up), 0, 0],
  ];
  const right = [-along, 0, -along * about(patch, axle, { x: 1, y: 0 }), 0, 0, 0];
  return solved(rows, right)[0];
}
