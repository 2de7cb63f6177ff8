/** A line and a sign of a chart. */
import type { Point } from '../core/plane/point.ts';
import type { MarkShape, PathStep, Role, Shape } from '../scene/shapes/shape.ts';

const SIGN_RADIUS = 5;
const DOT_RADIUS = 3.5;
export function chartLine(role: Role, points: readonly Point[]): Shape {
  return { kind: 'path', role, steps: stepsAlong(points) };
}

export function chartMark(role: Role, sign: MarkShape['sign'], at: Point): MarkShape {
  return { kind: 'mark', role, at, sign, radiusPx: sign === 'dot' ? DOT_RADIUS : SIGN_RADIUS };
}

export function stepsAlong(points: readonly Point[]): PathStep[] {
  return points.map((point, i) => ({ op: i === 0 ? 'move' : 'line', ...point }));
}
