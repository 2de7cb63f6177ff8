/** The rear's lift as the clutch is let out with the front wheel against a wall. */
import { absent } from '../readings/absent.ts';
import { pressAgainstWall, type AgainstWall } from '../riding/equilibrium/against-wall.ts';
import { STANDARD_GRAVITY } from '../units/convert.ts';
import type { StandingBike } from '../riding/stand-bike.ts';
import type { NoFigure, TrialFigure } from './trial-figure.ts';

/** How hard a careful hand lets the clutch out, as a part of the bike's weight with its rider. A choice, no source. */
export const WALL_PUSH = 0.25;
/** Friction of the rear tyre on the floor, no unit. Common for rubber on a dry workshop floor, from memory. */
export const WALL_GRIP = 0.8;

/**
 * The bike pressed against the wall with a part of the careful hand's push, 0 to 1. Forces in N. No answer without
 * springs, or for the reasons of `pressAgainstWall`.
 */
export function pressedAtWall({ sprung, mass }: StandingBike, part = 1): AgainstWall | NoFigure {
  if (sprung === undefined) return absent('noSprings');
  return pressAgainstWall(sprung, part * WALL_PUSH * mass * STANDARD_GRAVITY, WALL_GRIP);
}

/** Lift of the rear wheel, mm of rear travel, positive where the rear rises. */
export const wallLift: TrialFigure = {
  key: 'wallLift',
  label: 'Rear against the wall',
  quantity: 'length',
  isChange: true,
  more: 'rear lifts',
  less: 'rear sinks',
  same: 'rear stays',
  of: (_, on) => {
    const found = pressedAtWall(on);
    return found.ok ? found.rearLift : found;
  },
};
