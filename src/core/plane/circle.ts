/** Circles and their common outer tangents. */
import type { Point } from './point.ts';

export interface Circle {
  readonly centre: Point;
  readonly radius: number;
}

/** The two touching points of one tangent, in the order of the circles given. */
export interface Tangent {
  readonly from: Point;
  readonly to: Point;
}

/**
 * The common outer tangent of two circles that lies to the left (or right) of the way from the first centre to
 * the second: with the first circle behind and the second ahead, left is the upper one.
 * Same frame and unit as the circles. No answer when one circle lies within the other.
 */
export function outerTangent(
  first: Circle,
  second: Circle,
  side: 'left' | 'right',
): Tangent | 'oneInsideOther' {
  const dx = second.centre.x - first.centre.x;
  const dy = second.centre.y - first.centre.y;
  const d = Math.hypot(dx, dy);
  const sine = (first.radius - second.radius) / d;
  if (!(Math.abs(sine) < 1)) return 'oneInsideOther';
  const cosine = (side === 'left' ? 1 : -1) * Math.sqrt(1 - sine * sine);
  const ex = dx / d;
  const ey = dy / d;
  const nx = sine * ex - cosine * ey;
  const ny = sine * ey + cosine * ex;
  return {
    from: { x: first.centre.x + first.radius * nx, y: first.centre.y + first.radius * ny },
    to: { x: second.centre.x + second.radius * nx, y: second.centre.y + second.radius * ny },
  };
}
