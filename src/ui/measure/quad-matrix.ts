/** The turn of a style sheet that puts a picture's corners on four places of the screen, as a camera's view of a plane does. */
import type { Point } from '../../core/plane/point.ts';

/**
 * As `matrix3d` for a box of this size whose own corner is its upper left one; corners clockwise from there, px.
 * Source: Heckbert, Fundamentals of texture mapping and image warping, 1989, section 2.2.3; from memory.
 */
export function quadMatrix(
  width: number,
  height: number,
  [p0, p1, p2, p3]: readonly [Point, Point, Point, Point],
): readonly number[] {
  const [ax, ay] = [p1.x - p2.x, p1.y - p2.y];
  const [bx, by] = [p3.x - p2.x, p3.y - p2.y];
  const [sx, sy] = [p0.x - p1.x + p2.x - p3.x, p0.y - p1.y + p2.y - p3.y];
  const area = ax * by - bx * ay;
  const g = (sx * by - bx * sy) / area;
  const h = (ax * sy - sx * ay) / area;
  const across = { x: p1.x - p0.x + g * p1.x, y: p1.y - p0.y + g * p1.y };
  const down = { x: p3.x - p0.x + h * p3.x, y: p3.y - p0.y + h * p3.y };
  return [
    ...[across.x / width, across.y / width, 0, g / width],
    ...[down.x / height, down.y / height, 0, h / height],
    ...[0, 0, 1, 0],
    ...[p0.x, p0.y, 0, 1],
  ];
}
