/** The third corner of a triangle whose sides are known. */
import type { Point } from './point.ts';

/**
 * The corner that lies `fromOrigin` from the origin and `fromOther` from the other corner (x, y): a crossing of
 * two circles. Side 1 is the corner to the left of the way from the origin to the other corner, −1 to its right.
 * Both distances are given squared. Closed form; null when the sides do not reach each other.
 */
export function thirdCorner(
  x: number,
  y: number,
  fromOriginSquared: number,
  fromOtherSquared: number,
  side: 1 | -1,
): Point | null {
  const base = x * x + y * y;
  const along = (base + fromOriginSquared - fromOtherSquared) / (2 * base);
  const square = fromOriginSquared / base - along * along;
  if (!(square >= 0)) return null;
  const aside = side * Math.sqrt(square);
  return { x: along * x - aside * y, y: along * y + aside * x };
}
