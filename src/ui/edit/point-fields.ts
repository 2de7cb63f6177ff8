/** The fields of a bike that place a point, for a point whose place follows from other figures. */
import type { Bike } from '../../core/parts/bike.ts';
import { POINTS, type PointKey } from '../../core/sketch/points.ts';
import { BIKE_FIELDS, type BikeField } from '../../document/fields/editable-fields.ts';
import { fieldApplies } from './field-applies.ts';

/** Empty for a point that is placed by its two coordinates, or by a tyre alone. */
export function pointFields(bike: Bike, key: PointKey): readonly BikeField[] {
  const { placedBy } = POINTS[key];
  return BIKE_FIELDS.filter(
    ({ path }) => placedBy?.fields.includes(path) === true && fieldApplies(bike, path),
  );
}
