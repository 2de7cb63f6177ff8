/** Straight lines through two points, and where they cross. */
import type { Point } from './point.ts';

/** A line through `from` toward `to`; the two must differ. */
export interface Line {
  readonly from: Point;
  readonly to: Point;
}

/** Sine of the angle between two lines under which they count as parallel: a crossing 10⁹ lengths away is rounding. */
const PARALLEL_SINE = 1e-9;

/** Where two lines (not segments) cross, in their common frame; or 'parallel'. */
export function crossing(a: Line, b: Line): Point | 'parallel' {
  const ax = a.to.x - a.from.x;
  const ay = a.to.y - a.from.y;
  const bx = b.to.x - b.from.x;
  const by = b.to.y - b.from.y;
  const cross = ax * by - ay * bx;
  if (!(Math.abs(cross) > PARALLEL_SINE * Math.hypot(ax, ay) * Math.hypot(bx, by))) return 'parallel';
  const along = ((b.from.x - a.from.x) * by - (b.from.y - a.from.y) * bx) / cross;
  return { x: a.from.x + along * ax, y: a.from.y + along * ay };
}
