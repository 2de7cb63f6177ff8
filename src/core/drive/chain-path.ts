/** The taut chain's way round both sprockets, and over the pivot's guide when the upper run would pass below it. */
import type { Point } from '../plane/point.ts';
import type { ChainLoop } from './chain-loop.ts';

/** A circle about the swingarm pivot on which the chain's pitch line can lie, mm. */
export interface Guide {
  readonly centre: Point;
  readonly radius: number;
}

/** A taut chain in the plane of its sprocket centres. mm, radians; y up, x toward the front. */
export interface ChainPath {
  /** Whole length in links, wraps counted in teeth; in general no whole number. */
  readonly links: number;
  /** Angle of the free upper run, toward the front, as if no guide were there. */
  readonly freeTopAngle: number;
  readonly bottomAngle: number;
  /** Free upper run above the guide's centre, square to the run; 0 without a guide. */
  readonly topLever: number;
  /** Whether the upper run bends over the guide. */
  readonly onGuide: boolean;
  /** By how much the upper run bends down over the guide; 0 while it runs free. */
  readonly bend: number;
}

/**
 * The taut chain round sprockets at `rear` and `front`. When the free upper run passes the guide's centre, and lower
 * over it than the guide's radius, it goes straight to the guide, round it as a string at pitch-line height, and on.
 * The pull of the standing bike follows the same rule. Null when the sprockets overlap or the guide lies within one.
 */
export function chainPath(loop: ChainLoop, rear: Point, front: Point, guide: Guide | null): ChainPath | null {
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
  if (guide === null) return { links: free, freeTopAngle, bottomAngle, topLever: 0, onGuide: false, bend: 0 };
  const gx = guide.centre.x - rear.x;
  const gy = guide.centre.y - rear.y;
  const topLever = rearRadius - (gy * Math.cos(freeTopAngle) - gx * Math.sin(freeTopAngle));
  // The guide can only bend a run that passes its centre between its ends.
  const along = gy * Math.sin(freeTopAngle) + gx * Math.cos(freeTopAngle);
  if (!(topLever < guide.radius && along > 0 && along < run))
    return { links: free, freeTopAngle, bottomAngle, topLever, onGuide: false, bend: 0 };

  const behind = Math.sqrt(gx * gx + gy * gy);
  const fx = front.x - guide.centre.x;
  const fy = front.y - guide.centre.y;
  const ahead = Math.sqrt(fx * fx + fy * fy);
  const behindDifference = rearRadius - guide.radius;
  const aheadDifference = guide.radius - frontRadius;
  if (!(behind > Math.abs(behindDifference) && ahead > Math.abs(aheadDifference))) return null;
  const rearAngle = Math.atan2(gy, gx) - Math.asin(behindDifference / behind);
  const frontAngle = Math.atan2(fy, fx) - Math.asin(aheadDifference / ahead);
  const straight =
    run +
    Math.sqrt(behind * behind - behindDifference * behindDifference) +
    Math.sqrt(ahead * ahead - aheadDifference * aheadDifference) +
    guide.radius * (rearAngle - frontAngle);
  const wraps =
    (rearTeeth * (Math.PI + bottomAngle - rearAngle) + frontTeeth * (Math.PI - bottomAngle + frontAngle)) /
    (2 * Math.PI);
  return {
    links: straight / pitch + wraps,
    freeTopAngle,
    bottomAngle,
    topLever,
    onGuide: true,
    bend: rearAngle - frontAngle,
  };
}
