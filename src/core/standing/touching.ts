/** Parts that may touch the ground, and how round the tyres are, as a bike's setup has them. */
import type { PivotMove } from '../adjusters/machine-part-adjusters.ts';
import { fromPivot } from '../chassis/pivot-move.ts';
import type { Wheel } from '../parts/bike.ts';
import type { FramePoint } from '../parts/frame-point.ts';
import { TOUCH_KEYS, type TouchKey, type TouchPlaces } from '../parts/touch-parts.ts';
import { readTyreCode, type Tyre } from '../parts/tyre.ts';

export interface TouchPoint {
  readonly key: TouchKey;
  /** Frame coordinates. */
  readonly at: FramePoint;
  /** Out from the middle of the bike, mm. */
  readonly halfWidth: number;
}

/** Radius of the tread across each tyre, mm; null where not known. */
export interface Crowns {
  readonly front: number | null;
  readonly rear: number | null;
}

/** The parts whose half width is measured, from the pivot as the adjusters hold it. */
export function touchingOf(places: TouchPlaces, setup: PivotMove): readonly TouchPoint[] {
  return TOUCH_KEYS.flatMap((key) => {
    const { halfWidth, ...at } = places[key];
    return halfWidth === null ? [] : [{ key, at: fromPivot(at, setup), halfWidth }];
  });
}

/** The crown as measured, or half of the width that the tyre's size code says (common practice, no source); else null. */
export function crownOf({ crownRadius }: Wheel, tyre: Tyre): number | null {
  if (crownRadius !== null) return crownRadius;
  if (!('code' in tyre)) return null;
  const size = readTyreCode(tyre.code);
  return typeof size === 'string' ? null : size.width / 2;
}
