/** The taut chain's way round both sprockets, over the pivot's guide and under it, where a run would pass nearer to the pivot. */
import type { Point } from '../plane/point.ts';
import type { ChainLoop } from './chain-loop.ts';
import { lowerRun } from './lower-run.ts';
import { tautRun } from './taut-run.ts';

/** Pitch-line radii of the guides about the pivot, mm; null without one. */
export interface PivotGuides {
  readonly centre: Point;
  readonly upper: number | null;
  readonly lower: number | null;
}

/** A taut chain in the plane of its sprocket centres. mm, radians; y up, x toward the front. */
export interface ChainPath {
  /** Whole length in links, wraps counted in teeth; in general no whole number. */
  readonly links: number;
  /** Angle of the free upper run, toward the front, as if no guide were there. */
  readonly freeTopAngle: number;
  readonly bottomAngle: number;
  /** Free upper run above the guide's centre, square to the run; 0 without an upper guide. */
  readonly topLever: number;
  /** Whether the upper run bends over the guide. */
  readonly onGuide: boolean;
  /** By how much the upper run bends down over the guide; 0 while it runs free. */
  readonly bend: number;
  /** Whether the lower run bends under the guide below the pivot. */
  readonly underGuide: boolean;
}

/**
 * The taut chain round sprockets at `rear` and `front`. When the free upper run passes the guides' centre, and lower
 * over it than the upper guide's radius, it goes straight to the guide, round it as a string at pitch-line height, and
 * on; the lower run likewise under the lower guide. The pulls of the standing bike follow the same rule. Null when the
 * sprockets overlap or a guide lies within one.
 */
export function chainPath(
  loop: ChainLoop,
  rear: Point,
  front: Point,
  guides: PivotGuides | null,
): ChainPath | null {
  const upper = withUpperGuide(loop, rear, front, guides);
  if (upper === null || guides === null || guides.lower === null) return upper;
  const { centre, lower } = guides;
  const x = centre.x - rear.x;
  const y = centre.y - rear.y;
  // Most lower runs pass well below: only one that comes near is followed round its guide.
  if (loop.rearRadius + y * Math.cos(upper.bottomAngle) - x * Math.sin(upper.bottomAngle) >= lower)
    return upper;
  const run = lowerRun(loop, rear, front, { centre, radius: lower });
  if (run === null) return null;
  if (run.bentBy === 0) return upper;
  return { ...upper, links: upper.links + run.bentBy / loop.pitch, underGuide: true };
}

/** The path with its lower run straight. */
function withUpperGuide(
  loop: ChainLoop,
  rear: Point,
  front: Point,
  guides: PivotGuides | null,
): ChainPath | null {
  const { pitch, frontTeeth, rearTeeth, frontRadius, rearRadius } = loop;
  const dx = front.x - rear.x;
  const dy = front.y - rear.y;
  const centres = Math.sqrt(dx * dx + dy * dy);
  if (!(centres > rearRadius + frontRadius)) return null;
  const difference = rearRadius - frontRadius;
  const line = Math.atan2(dy, dx);
  const wedge = Math.asin(difference / centres);
  const run = Math.sqrt(centres * centres - difference * difference);
  const freeTopAngle = line - wedge;
  const bottomAngle = line + wedge;
  const free =
    (2 * run) / pitch + (rearTeeth + frontTeeth) / 2 + ((rearTeeth - frontTeeth) * wedge) / Math.PI;
  const straight = { links: free, freeTopAngle, bottomAngle, onGuide: false, bend: 0, underGuide: false };
  if (guides === null || guides.upper === null) return { ...straight, topLever: 0 };
  const guide = { centre: guides.centre, radius: guides.upper };
  const gx = guide.centre.x - rear.x;
  const gy = guide.centre.y - rear.y;
  const topLever = rearRadius - (gy * Math.cos(freeTopAngle) - gx * Math.sin(freeTopAngle));
  // The guide can only bend a run that passes its centre between its ends.
  const along = gy * Math.sin(freeTopAngle) + gx * Math.cos(freeTopAngle);
  if (!(topLever < guide.radius && along > 0 && along < run)) return { ...straight, topLever };

  const ends = {
    rear: { centre: rear, radius: rearRadius },
    front: { centre: front, radius: frontRadius },
  };
  const bent = tautRun(ends, guide, 1);
  if (bent === null) return null;
  const wraps =
    (rearTeeth * (Math.PI + bottomAngle - bent.rearAngle) +
      frontTeeth * (Math.PI - bottomAngle + bent.frontAngle)) /
    (2 * Math.PI);
  const bend = bent.rearAngle - bent.frontAngle;
  return { ...straight, links: (run + bent.length) / pitch + wraps, topLever, onGuide: true, bend };
}
