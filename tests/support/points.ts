/** Points of bikes for tests: those that a bike has without links, and where they stand. */
import type { Bike } from '../../src/core/parts/bike.ts';
import type { Point } from '../../src/core/plane/point.ts';
import { pointPlace, pointsOf, type PointKey } from '../../src/core/sketch/points.ts';
import type { Stance } from '../../src/core/standing/stance.ts';
import { plainBike } from './plain-bike.ts';

/** The points of a bike with a chain and a travel table: all but the bolts of links. */
export const PARTS = pointsOf(plainBike);

/** Where a point stands on the ground frame, mm; stops where the bike has no such point. */
export function placed(stance: Stance, bike: Bike, key: PointKey): Point {
  const place = pointPlace(stance, bike, key);
  if (place === null) throw new Error(`The bike has no ${key}.`);
  return place;
}
