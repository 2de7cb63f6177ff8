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
 * at its beginning, and `stand` stands the bike likewise with another setup; null where it does not stand. Tail and top clamp follow straight up and down, by as much as the adjuster moves them there: the end
 * that is pulled down goes down. The axle follows its slot. The result is held in the adjuster's range and on its steps.
 */
export function pulledAdjuster(
  bike: Bike,
  setup: Setup,
  standing: Stance,
  key: GripKey,
  pull: Point,
  stand: (setup: Setup) => Stance | null,
): number {
  const { least, most, step } = adjusterRange(adjusterOf(key), bike, setup);
  const value = setup[key] + amountPulled(setup, standing, key, pull, stand);
  const stepped = Number((Math.round(value / step) * step).toFixed(6));
  return Math.min(most, Math.max(least, stepped));
}

function amountPulled(
  setup: Setup,
  standing: Stance,
  key: GripKey,
  pull: Point,
  stand: (setup: Setup) => Stance | null,
): number {
  if (key === 'axlePosition')
    return -pull.x * Math.cos(standing.swingarmAngle) - pull.y * Math.sin(standing.swingarmAngle);
  const after = stand({ ...setup, [key]: setup[key] + PROBE });
  if (after === null) return 0;
  const response = (gripPlace(after, key).y - gripPlace(standing, key).y) / PROBE;
  return Math.abs(response) > LEAST_RESPONSE ? pull.y / response : 0;
}
