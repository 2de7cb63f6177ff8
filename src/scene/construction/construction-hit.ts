/** Which construction's line lies under a place on the side view. */
import type { Construction } from '../../core/readings/reading.ts';
import type { Point } from '../../core/plane/point.ts';
import type { StandingBike } from '../../core/riding/stand-bike.ts';
import { constructionShapes, standingConstructions } from './construction-drawing.ts';
import type { PathStep, Shape } from '../shapes/shape.ts';

function distanceToSegment(p: Point, a: Point, b: Point): number {
  const dx = b.x - a.x;
  const dy = b.y - a.y;
  const square = dx * dx + dy * dy;
  const part = square > 0 ? Math.min(1, Math.max(0, ((p.x - a.x) * dx + (p.y - a.y) * dy) / square)) : 0;
  return Math.hypot(p.x - a.x - part * dx, p.y - a.y - part * dy);
}

/** Distance of a place from an outline's straight pieces; constructions have no others. */
function distanceToSteps(p: Point, steps: readonly PathStep[]): number {
  let nearest = Infinity;
  let from: Point | null = null;
  for (const step of steps) {
    if (step.op === 'line' && from !== null) nearest = Math.min(nearest, distanceToSegment(p, from, step));
    if (step.op === 'line' || step.op === 'move') from = step;
  }
  return nearest;
}

function distanceTo(p: Point, shape: Shape): number {
  if (shape.kind === 'path') return distanceToSteps(p, shape.steps);
  return Math.hypot(p.x - shape.at.x, p.y - shape.at.y);
}

/**
 * The drawn construction nearest to a place of the ground frame and within `reach` mm of it, or null. `lit` is drawn
 * besides those that always are.
 */
export function constructionAt(
  standing: StandingBike,
  place: Point,
  reach: number,
  lit: Construction | null = null,
): Construction | null {
  let found: Construction | null = null;
  let nearest = reach;
  const always = standingConstructions(standing);
  const drawn = lit === null || always.includes(lit) ? always : [...always, lit];
  for (const which of drawn)
    for (const shape of constructionShapes(standing, which)) {
      const away = distanceTo(place, shape);
      if (away <= nearest) {
        nearest = away;
        found = which;
      }
    }
  return found;
}
