/** How surely the points of a measured bike stand where they are drawn: the spread of each over the floor. */
import { SKETCH_POINTS, type PointKey } from '../../sketch/points.ts';
import { figureSpreads, sharedSpread, spreadOf } from './figure-spreads.ts';
import type { Fit } from '../fit-values.ts';
import { standMeasured, widestOf } from '../measured-readings.ts';

/** Variances of a point along and up from the rear contact patch, and their covariance, mm². */
export interface PlaceSpread {
  readonly key: PointKey;
  readonly along: number;
  readonly up: number;
  readonly both: number;
}

/**
 * The spread of every point of the bike in the posture that it was measured in, ground frame with its origin at the rear
 * contact patch. A point is left out where it hangs on something that no row fixes, or its standard deviation is beyond
 * 50 mm.
 */
export function measuredPlaces(fit: Fit): readonly PlaceSpread[] {
  const spreads = figureSpreads(fit, (built, onSprings) => {
    const asked = onSprings(built);
    const stood = standMeasured(asked, fit.origin);
    return SKETCH_POINTS.flatMap(({ place }): readonly (number | null)[] => {
      const at = stood === null ? null : place(stood, asked.bike);
      return at === null ? [null, null] : [at.x, at.y];
    });
  });
  return SKETCH_POINTS.flatMap(({ key }, i): readonly PlaceSpread[] => {
    const [x, y] = [spreads.at(2 * i), spreads.at(2 * i + 1)];
    if (x === undefined || y === undefined) return [];
    const [along, up, both] = [spreadOf(x), spreadOf(y), sharedSpread(x, y)];
    if (along === null || up === null || both === null || Math.max(along, up) > widestOf('mm')) return [];
    return [{ key, along: along ** 2, up: up ** 2, both }];
  });
}
