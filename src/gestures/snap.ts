/** Snaps a place: level or plumb with another point near enough, else to whole millimetres. */
import type { Point } from '../core/plane/point.ts';

/** How near to level or plumb a place must be, px of the screen. */
export const SNAP_REACH_PX = 6;
/** The most that snapping may move a point of the bike, mm: on a small drawing 6 px are 30 mm. */
export const SNAP_REACH_MM = 3;

/** A line to draw from the point that a place is level or plumb with, to the place; ground frame, mm. */
export interface SnapGuide {
  readonly from: Point;
  readonly to: Point;
}

export interface Snap {
  readonly place: Point;
  readonly guides: readonly SnapGuide[];
}

/**
 * Where a place of the ground frame goes, mm: each coordinate to that of the point nearest in it within reach, else to
 * a whole mm. `scale` is the view's, px per mm; reach is 6 px, and never more than 3 mm. Without `allowed` the place stays as it is.
 */
export function snapPlace(place: Point, others: readonly Point[], scale: number, allowed: boolean): Snap {
  if (!allowed) return { place, guides: [] };
  const reach = Math.min(SNAP_REACH_PX / scale, SNAP_REACH_MM);
  const plumb = nearestIn('x', place, others, reach);
  const level = nearestIn('y', place, others, reach);
  const to = { x: plumb?.x ?? whole(place.x), y: level?.y ?? whole(place.y) };
  return { place: to, guides: [plumb, level].filter((from) => from !== null).map((from) => ({ from, to })) };
}

/** Never −0, which is not the same as 0. */
function whole(mm: number): number {
  return Math.round(mm) + 0;
}

function nearestIn(axis: 'x' | 'y', place: Point, others: readonly Point[], reach: number): Point | null {
  let found: Point | null = null;
  let nearest = reach;
  for (const other of others) {
    const away = Math.abs(other[axis] - place[axis]);
    // Of equally near ones the earlier, so that a guide does not flicker.
    if (away > nearest || (found !== null && away === nearest)) continue;
    found = other;
    nearest = away;
  }
  return found;
}
