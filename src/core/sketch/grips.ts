/** The grips: places on a standing bike by which a dial is pulled along its own line. */
import type { NumberDial } from '../springs/dial.ts';
import { dialOf } from '../springs/dials.ts';
import type { Bike } from '../chassis/bike.ts';
import { onLegs } from '../chassis/front-end.ts';
import type { Setup } from '../chassis/setup.ts';
import type { Point } from '../plane/point.ts';
import { machine } from '../springs/machine.ts';
import { stance, type Stance } from '../springs/stance.ts';
import { onGround } from './points.ts';

export type GripKey = 'shockLength' | 'forkHeight' | 'axlePosition';

export const GRIPS: readonly { readonly key: GripKey; readonly label: string }[] = [
  { key: 'shockLength', label: 'Raise or lower the rear' },
  { key: 'forkHeight', label: 'Slide the fork in its clamps' },
  { key: 'axlePosition', label: 'Move the axle in its slot' },
];

/** Where a grip is drawn, ground frame, mm: at the tail, on the fork's top, behind the axle. */
export function gripPlace(standing: Stance, setup: Setup, key: GripKey): Point {
  const { machine: made } = standing;
  switch (key) {
    case 'shockLength':
      return onGround(standing, made.loadX, made.loadY);
    case 'forkHeight': {
      const { x, y } = onLegs(made.front, -setup.forkHeight, 0);
      return onGround(standing, x, y);
    }
    case 'axlePosition':
      return { x: standing.rearAxleX, y: standing.rearAxleY };
  }
}

/** How far a dial is moved to find which way its grip goes, in its own unit. */
const PROBE = 0.5;

/** The least movement of a grip per unit of its dial that can be pulled by hand. */
const LEAST_RESPONSE = 1e-6;

/**
 * The dial value that follows a pull of (dx, dy) mm from where the pull began. `setup` and `standing` are those
 * at its beginning. The fork's top and the axle follow their own line; the tail follows straight up, by as much as
 * the shock length raises it there. The result is held in the dial's range and on its steps.
 */
export function pulledDial(bike: Bike, setup: Setup, standing: Stance, key: GripKey, pull: Point): number {
  const dial = dialOf(key) as NumberDial;
  const { least, most, step } = dial.range(bike);
  const value = setup[key] + amountPulled(bike, setup, standing, key, pull);
  const stepped = Number((Math.round(value / step) * step).toFixed(6));
  return Math.min(most, Math.max(least, stepped));
}

function amountPulled(bike: Bike, setup: Setup, standing: Stance, key: GripKey, pull: Point): number {
  if (key === 'forkHeight') {
    const lean = standing.machine.front.legLean + standing.pose.pitch;
    return pull.y * Math.cos(lean) - pull.x * Math.sin(lean);
  }
  if (key === 'axlePosition')
    return -pull.x * Math.cos(standing.swingarmAngle) - pull.y * Math.sin(standing.swingarmAngle);
  const probed = machine(bike, { ...setup, shockLength: setup.shockLength + PROBE });
  if (!probed.ok) return 0;
  const after = stance(probed, standing.travel);
  if (!after.ok) return 0;
  const response = (gripPlace(after, setup, key).y - gripPlace(standing, setup, key).y) / PROBE;
  return Math.abs(response) > LEAST_RESPONSE ? pull.y / response : 0;
}
