/** The rear's lift as the clutch is let out with the front wheel against a wall. */
import { absent } from '../readings/absent.ts';
import { pressAgainstWall } from '../riding/equilibrium/against-wall.ts';
import { STANDARD_GRAVITY } from '../units/convert.ts';
import type { TrialFigure } from './trial-figure.ts';

/** How hard a careful hand lets the clutch out, as a part of the bike's weight with its rider. A choice, no source. */
export const WALL_PUSH = 0.25;
/** Friction of the rear tyre on the floor, no unit. Common for rubber on a dry workshop floor, from memory. */
export const WALL_GRIP = 0.8;

/** Lift of the rear wheel, mm of rear travel, positive where the rear rises. */
export const wallLift: TrialFigure = {
  key: 'wallLift',
  label: 'Rear against the wall',
  quantity: 'length',
  isChange: true,
  more: 'rear lifts',
  less: 'rear sinks',
  same: 'rear stays',
  of: (_, { sprung, mass }) => {
    if (sprung === undefined) return absent('noSprings');
    const found = pressAgainstWall(sprung, WALL_PUSH * mass * STANDARD_GRAVITY, WALL_GRIP);
    return found.ok ? found.rearLift : found;
  },
};
