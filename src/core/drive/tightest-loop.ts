/** The shortest chain round both sprockets and the pivot's guides, above and below: both runs taut at once. */
import type { Point } from '../plane/point.ts';
import type { ChainLoop } from './chain-loop.ts';

/** Pitch-line radii of the guides about the pivot, mm; null without one. */
export interface PivotGuides {
  readonly centre: Point;
  readonly upper: number | null;
  readonly lower: number | null;
}

/** One run between its sprockets: its straight pieces with the arc on the guide, and its angles at both ends. */
interface Run {
  readonly length: number;
  readonly rearAngle: number;
  readonly frontAngle: number;
}

/**
 * Length of the shortest loop in links, wraps counted in teeth; in general no whole number. Each run goes straight, or
 * round its guide as a string at pitch-line height where it would pass nearer to the pivot's centre than the guide does.
 * Angles are those toward the front above the x axis. null when the sprockets overlap or one covers a guide.
 */
export function tightestLoop(
  loop: ChainLoop,
  rear: Point,
  front: Point,
  { centre, upper, lower }: PivotGuides,
): number | null {
  const top = run(loop, rear, front, centre, upper, 1);
  const bottom = run(loop, rear, front, centre, lower, -1);
  if (top === null || bottom === null) return null;
  const { pitch, rearTeeth, frontTeeth } = loop;
  const wraps =
    rearTeeth * (Math.PI + bottom.rearAngle - top.rearAngle) +
    frontTeeth * (Math.PI - bottom.frontAngle + top.frontAngle);
  return (top.length + bottom.length) / pitch + wraps / (2 * Math.PI);
}

/** `side` 1 is the upper run and its guide, −1 the lower. */
function run(
  loop: ChainLoop,
  rear: Point,
  front: Point,
  centre: Point,
  radius: number | null,
  side: 1 | -1,
): Run | null {
  const free = tangent(rear, loop.rearRadius, front, loop.frontRadius, side);
  if (free === null) return null;
  if (radius === null) return { length: free.length, rearAngle: free.angle, frontAngle: free.angle };
  const x = centre.x - rear.x;
  const y = centre.y - rear.y;
  const cos = Math.cos(free.angle);
  const sin = Math.sin(free.angle);
  // Distance of the free run from the centre on its own side, and the centre's place along the run.
  const clear = loop.rearRadius - side * (y * cos - x * sin);
  const along = x * cos + y * sin;
  if (!(clear < radius && along > 0 && along < free.length))
    return { length: free.length, rearAngle: free.angle, frontAngle: free.angle };
  const behind = tangent(rear, loop.rearRadius, centre, radius, side);
  const ahead = tangent(centre, radius, front, loop.frontRadius, side);
  if (behind === null || ahead === null) return null;
  return {
    length: behind.length + ahead.length + radius * side * (behind.angle - ahead.angle),
    rearAngle: behind.angle,
    frontAngle: ahead.angle,
  };
}

/** The outer tangent on one side of two circles; null when one lies within the other. */
function tangent(
  from: Point,
  fromRadius: number,
  to: Point,
  toRadius: number,
  side: 1 | -1,
): { readonly angle: number; readonly length: number } | null {
  const x = to.x - from.x;
  const y = to.y - from.y;
  const apart = Math.hypot(x, y);
  const difference = fromRadius - toRadius;
  if (!(apart > Math.abs(difference))) return null;
  return {
    angle: Math.atan2(y, x) - side * Math.asin(difference / apart),
    length: Math.sqrt(apart * apart - difference * difference),
  };
}
