/** Where two circles cross, without the program's triangles. */
import type { Circle } from '../../src/core/plane/circle.ts';
import type { Point } from '../../src/core/plane/point.ts';

/** The crossing points of two circles: none, one (touching) or two. */
export function circleCrossings(a: Circle, b: Circle): Point[] {
  const dx = b.centre.x - a.centre.x;
  const dy = b.centre.y - a.centre.y;
  const d = Math.hypot(dx, dy);
  if (!(d > 0)) return [];
  const along = (d * d + a.radius * a.radius - b.radius * b.radius) / (2 * d);
  const square = a.radius * a.radius - along * along;
  if (square < 0) return [];
  const foot = { x: a.centre.x + (along * dx) / d, y: a.centre.y + (along * dy) / d };
  const half = Math.sqrt(square);
  if (half === 0) return [foot];
  return [
    { x: foot.x - (half * dy) / d, y: foot.y + (half * dx) / d },
    { x: foot.x + (half * dy) / d, y: foot.y - (half * dx) / d },
  ];
}
