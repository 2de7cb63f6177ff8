/** A taut string on one side of two circles: straight, or round a guide between them. */
import type { Circle } from '../plane/circle.ts';

/** One run between its ends: its straight pieces with the arc on the guide, and its angles at both ends. */
export interface TautRun {
  readonly length: number;
  readonly rearAngle: number;
  readonly frontAngle: number;
  readonly isBent: boolean;
}

/**
 * A taut string on one side of two circles, mm: `side` 1 is the upper side with its guide below, −1 the lower with its
 * guide above. It goes straight, or round the guide where it would pass nearer to the guide's centre than its radius. A
 * place that the string is held at is a circle without radius. null when one circle lies within the other.
 */
export function tautRun(
  { rear, front }: { readonly rear: Circle; readonly front: Circle },
  guide: Circle | null,
  side: 1 | -1,
): TautRun | null {
  const free = tangent(rear, front, side);
  if (free === null) return null;
  const straight = { length: free.length, rearAngle: free.angle, frontAngle: free.angle, isBent: false };
  if (guide === null) return straight;
  const { centre, radius } = guide;
  const x = centre.x - rear.centre.x;
  const y = centre.y - rear.centre.y;
  const cos = Math.cos(free.angle);
  const sin = Math.sin(free.angle);
  // Distance of the free run from the centre on its own side, and the centre's place along the run.
  const clear = rear.radius - side * (y * cos - x * sin);
  const along = x * cos + y * sin;
  if (!(clear < radius && along > 0 && along < free.length)) return straight;
  const behind = tangent(rear, guide, side);
  const ahead = tangent(guide, front, side);
  if (behind === null || ahead === null) return null;
  return {
    length: behind.length + ahead.length + radius * side * (behind.angle - ahead.angle),
    rearAngle: behind.angle,
    frontAngle: ahead.angle,
    isBent: true,
  };
}

/** The outer tangent on one side of two circles; null when one lies within the other. */
function tangent(
  from: Circle,
  to: Circle,
  side: 1 | -1,
): { readonly angle: number; readonly length: number } | null {
  const x = to.centre.x - from.centre.x;
  const y = to.centre.y - from.centre.y;
  const apart = Math.hypot(x, y);
  const difference = from.radius - to.radius;
  if (!(apart > Math.abs(difference))) return null;
  return {
    angle: Math.atan2(y, x) - side * Math.asin(difference / apart),
    length: Math.sqrt(apart * apart - difference * difference),
  };
}
