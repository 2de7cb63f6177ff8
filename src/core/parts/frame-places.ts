/** Every place on the frame that a bike stores as one point and that moves alone. */
import { countershaft } from './countershaft.ts';
import { loadMark } from './load-mark.ts';
import { passengerSeat } from './passenger-seat.ts';
import { seat } from './seat.ts';
import { sprungCentre } from './sprung-centre.ts';
import { tank } from './tank.ts';
import type { FramePlace } from './frame-place.ts';
import type { FramePoint } from './frame-point.ts';

const places = {
  countershaft,
  sprungCentre,
  seat,
  passengerSeat,
  loadMark,
  tank,
} satisfies Readonly<Record<string, FramePlace>>;

export type FramePlaceKey = keyof typeof places;

/** A point for every place on the frame. */
export type FramePlaces = Readonly<Record<FramePlaceKey, FramePoint>>;

export const FRAME_PLACES: Readonly<Record<FramePlaceKey, FramePlace>> = places;

export const FRAME_PLACE_KEYS = Object.keys(places) as readonly FramePlaceKey[];

/** One value for every place on the frame. */
export function eachFramePlace<T>(value: (key: FramePlaceKey) => T): Readonly<Record<FramePlaceKey, T>> {
  const found: Partial<Record<FramePlaceKey, T>> = {};
  for (const key of FRAME_PLACE_KEYS) found[key] = value(key);
  return found as Record<FramePlaceKey, T>;
}
