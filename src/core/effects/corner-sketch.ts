/** The corner as a sketch: the circle at entry, apex and exit by the bike's attitude there, and how wide it runs on the gas. */
import { absent, type Absent } from '../readings/absent.ts';
import type { NoStand } from '../riding/no-stand.ts';
import { standBike } from '../riding/stand-bike.ts';
import type { RideStateKey } from '../riding/states/all-ride-states.ts';
import { radians } from '../units/convert.ts';
import { circleRadius, SKETCH_BAR_DEG } from './corner-radius.ts';
import type { AsSet } from './turn.ts';

/** The bend turns by so much before its apex and again behind it, radians. A choice, no source. */
export const HALF_TURN = Math.PI / 4;
/** How much wider than planned a rider lets the bike run before the gas has to wait, mm. A choice, no source. */
export const SPARE_ROAD = 100;

/** How the bike stands at a place of the corner, mm and radians. */
export interface Attitude {
  readonly wheelbase: number;
  readonly rake: number;
}

export interface CornerPlace extends Attitude {
  readonly state: RideStateKey;
  /** Of the circle, mm. */
  readonly radius: number;
  /** Part of the wheel loads on the front, per cent; null where the springs do not say. */
  readonly frontShare: number | null;
}

export interface CornerSketch {
  readonly ok: true;
  /** Radians, the same all the way. */
  readonly lean: number;
  readonly entry: CornerPlace;
  readonly apex: CornerPlace;
  readonly exit: CornerPlace;
  /** How far outside the line of a bike that holds its attitude this one leaves the corner, mm; below zero, inside. */
  readonly wide: number;
  /** How far behind the apex the gas can open so that the spare road is enough, radians of the turn; 0 at the apex. */
  readonly gasAt: number;
}

export type NoCorner = NoStand | Absent;

/** Ride states of the three places, in the order of the corner. */
export const CORNER_STATES = { entry: 'braking', apex: 'midCorner', exit: 'accelerating' } as const;

/**
 * How far outside one arc another one ends that leaves it at the apex, mm: (other − radius) · (1 − cos(turn)), both radii,
 * square to the way both bikes then go. Positive is outside. The same attitude gives the same circle and so 0. From plane
 * geometry. Always has an answer.
 * Example: radius 33000 mm, other 33500 mm, turn 45° → 146.447 mm.
 */
export function runsWide(radius: number, other: number, turn: number): number {
  return (other - radius) * (1 - Math.cos(turn));
}

/**
 * The corner of a bike as set: braking, mid-corner and on the gas, at the bar angle and lean of the middle throughout.
 * Kinematic: wheels that roll where they point. No answer where the bike does not stand, or leans too far to ride on.
 */
export function cornerSketch({ bike, setup }: AsSet): CornerSketch | NoCorner {
  const lean = radians(setup.leanDeg);
  if (!(Math.cos(lean) > 0)) return absent('notCarried');
  const [entry, apex, exit] = Object.values(CORNER_STATES).map((state): CornerPlace | NoStand => {
    const on = standBike(bike, setup, state);
    if (!on.ok) return on;
    const { pose, rake, equilibrium } = on;
    const { wheelbase } = pose;
    const { front, rear } = equilibrium ?? {};
    const radius = circleRadius({ wheelbase, rake, lean, bar: radians(SKETCH_BAR_DEG) });
    const frontShare =
      front === undefined || rear === undefined
        ? null
        : (100 * front.wheelLoad) / (front.wheelLoad + rear.wheelLoad);
    return { wheelbase, rake, state, radius, frontShare };
  });
  if ('ok' in entry) return entry;
  if ('ok' in apex) return apex;
  if ('ok' in exit) return exit;
  const wide = runsWide(apex.radius, exit.radius, HALF_TURN);
  const gasAt = wide <= SPARE_ROAD ? 0 : HALF_TURN - Math.acos(1 - SPARE_ROAD / (exit.radius - apex.radius));
  return { ok: true, lean, entry, apex, exit, wide, gasAt };
}
