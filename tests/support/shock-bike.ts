/** The plain bike with one straight shock between two bolts, its travel table worked out from where the bolts are. */
import type { Bike } from '../../src/core/parts/bike.ts';
import type { TravelRow } from '../../src/core/parts/rear-layout.ts';
import type { Setup } from '../../src/core/adjusters/setup.ts';
import type { Point } from '../../src/core/plane/point.ts';
import { plainBike, plainSetup, withFrame, withSwingarm } from './plain-bike.ts';

/** Upper bolt in frame coordinates; lower bolt along the arm from the pivot and square above it, mm. */
export const UPPER_BOLT: Point = { x: -120, y: 230 };
export const LOWER_BOLT: Point = { x: 330, y: 40 };

/** Table rows are this far apart, mm: between them the curve strays from the circle by under 1e-4 mm. */
const ROW = 1;

/** Distance of the bolts with the arm at an angle below the frame's x axis, mm. */
export function boltDistance(angle: number): number {
  const x = -LOWER_BOLT.x * Math.cos(angle) - LOWER_BOLT.y * Math.sin(angle);
  const y = -LOWER_BOLT.x * Math.sin(angle) + LOWER_BOLT.y * Math.cos(angle);
  return Math.hypot(x - UPPER_BOLT.x, y - UPPER_BOLT.y);
}

function table(): TravelRow[] {
  const { length, toppedOutAngleDeg, wheelTravel } = plainBike.swingarm;
  const hanging = (toppedOutAngleDeg * Math.PI) / 180;
  const rows: TravelRow[] = [];
  for (let travel = 0; travel <= wheelTravel; travel += ROW) {
    const angle = Math.asin(Math.sin(hanging) - travel / length);
    rows.push({ wheelTravel: travel, shockStroke: boltDistance(hanging) - boltDistance(angle) });
  }
  return rows;
}

/** No guide, and the rider's centre fixed to the frame, so that everything is a rigid body. */
export const shockBike: Bike = withFrame(withSwingarm(plainBike, { travelTable: table() }), {
  guideRadius: null,
  countershaft: { x: 80, y: 15 },
  seat: { x: 30, y: 520 },
});

export const shockSetup: Setup = { ...plainSetup, riderHeight: 0 };
