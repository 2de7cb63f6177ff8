/** The distance of a point from a line, with the side on which it lies. */
import type { Line } from '../../src/core/plane/line.ts';
import type { Point } from '../../src/core/plane/point.ts';

/** Distance of a point from a line, mm, positive to the left of from → to (above a line that points forward). */
export function signedDistance(line: Line, p: Point): number {
  const dx = line.to.x - line.from.x;
  const dy = line.to.y - line.from.y;
  return (dx * (p.y - line.from.y) - dy * (p.x - line.from.x)) / Math.hypot(dx, dy);
}
