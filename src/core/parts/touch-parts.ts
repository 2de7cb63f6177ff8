/** Every part that may touch the ground, and what a bike says of it. */
import type { FramePoint } from './frame-point.ts';
import { belly } from './belly.ts';
import { footrest } from './footrest.ts';
import { sideStand } from './side-stand.ts';
import { silencer } from './silencer.ts';
import type { TouchPart } from './touch-part.ts';

const parts = { footrest, silencer, belly, sideStand } satisfies Readonly<Record<string, TouchPart>>;

export type TouchKey = keyof typeof parts;

export const TOUCH_PARTS: Readonly<Record<TouchKey, TouchPart>> = parts;

export const TOUCH_KEYS = Object.keys(parts) as readonly TouchKey[];

/** A part of one bike that may touch: the place on it that does so first. */
export interface TouchPlace extends FramePoint {
  /** How far out it stands from the middle of the bike, mm; null while nobody has measured it: then it does not count. */
  readonly halfWidth: number | null;
}

/** The places of all these parts. */
export type TouchPlaces = Readonly<Record<TouchKey, TouchPlace>>;

/** Makes one value for each of these parts. */
export function eachTouchPart<T>(value: (key: TouchKey) => T): Readonly<Record<TouchKey, T>> {
  const found: Partial<Record<TouchKey, T>> = {};
  for (const key of TOUCH_KEYS) found[key] = value(key);
  return found as Record<TouchKey, T>;
}
