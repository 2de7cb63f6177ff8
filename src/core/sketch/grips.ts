/** The grips: places on a standing bike by which an adjuster is pulled along its own line. */
import { adjusterOf } from '../adjusters/all-adjusters.ts';
import { adjusterRange } from '../standing/adjuster-range.ts';
import { onGround } from '../chassis/pose.ts';
import type { Bike } from '../parts/bike.ts';
import { onLegs } from '../chassis/front-end.ts';
import type { Setup } from '../adjusters/setup.ts';
import type { Point } from '../plane/point.ts';
import type { Stance } from '../standing/stance.ts';

export type GripKey = 'shockLength' | 'forkTubes' | 'axlePosition';

export const GRIPS: readonly { readonly key: GripKey; readonly label: string }[] = [
  { key: 'shockLength', label: 'Raise or lower the rear' },
  { key: 'forkTubes', label: 'Raise or lower the front' },
  { key: 'axlePosition', label: 'Move the axle in its slot' },
];

/** Where a grip is drawn, ground frame, mm: at the tail, on the top clamp, on the rear axle. */
export function gripPlace(standing: Stance, key: GripKey): Point {
  const { machine: made } = standing;
  switch (key) {
    case 'shockLength':
      return onGround(standing.pose, made.places.loadMark);
    case 'forkTubes':
      return onGround(standing.pose, onLegs(made.front, 0, 0));
    case 'axlePosition':
      return standing.rearAxle;
  }
}

/** How far an adjuster is moved to find which way its grip goes, in its own unit. */
const PROBE = 0.5;

/** The least movement of a grip per unit of its adjuster that can be pulled by hand. */
const LEAST_RESPONSE = 1e-6;

/**
 * The adjuster value that follows a pull of (dx, dy) mm from where the pull began. `setup` and `standing` are those
 * at its beginning, and `stand` stands the bike likewise with another setup; null where it does not stand. Tail and top
 * clamp follow straight up and down, by as much as the adjuster moves them there: the end that is pulled down goes down.
 * The axle follows its slot. Where the adjuster's whole range would take less than `leastReach` mm of pulling, it takes
 * that much, so that a hand can find a step in it; the grip then lags behind the hand. The result is held in the
 * adjuster's range and on its steps.
 */
export function pulledAdjuster(
  bike: Bike,
  setup: Setup,
  standing: Stance,
  key: GripKey,
  pull: Point,
  stand: (setup: Setup) => Stance | null,
  leastReach = 0,
): number {
  const { least, most, step } = adjusterRange(adjusterOf(key), bike, setup);
  const { along, response } = pullAlong(setup, standing, key, pull, stand);
  const amount = Math.abs(response) > LEAST_RESPONSE ? along / response : 0;
  const reach = Math.abs(response) * (most - least);
  const value = setup[key] + (reach < leastReach ? (reach / leastReach) * amount : amount);
  const stepped = Number((Math.round(value / step) * step).toFixed(6));
  return Math.min(most, Math.max(least, stepped));
}

/** How far a pull goes along the grip's own line, mm, and how far the grip goes there for each unit of its adjuster. */
function pullAlong(
  setup: Setup,
  standing: Stance,
  key: GripKey,
  pull: Point,
  stand: (setup: Setup) => Stance | null,
): { readonly along: number; readonly response: number } {
  if (key === 'axlePosition') {
    const { swingarmAngle } = standing;
    return { along: -pull.x * Math.cos(swingarmAngle) - pull.y * Math.sin(swingarmAngle), response: 1 };
  }
  const after = stand({ ...setup, [key]: setup[key] + PROBE });
  const response = after === null ? 0 : (gripPlace(after, key).y - gripPlace(standing, key).y) / PROBE;
  return { along: pull.y, response };
}
