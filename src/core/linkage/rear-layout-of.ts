/** Layout and adjusters of the rear suspension as bike and setup hold them. */
import type { Swingarm } from '../parts/bike.ts';
import type { Layout } from '../parts/rear-layout.ts';
import type { RearAdjusters } from './link-adjustments.ts';

/** The drawn links of a swingarm, or its table where none are drawn. */
export function rearLayout(swingarm: Swingarm): Layout {
  if (swingarm.links !== null) return swingarm.links;
  const { travelTable, tablePitchDeg, toppedOutAngleDeg, wheelTravel } = swingarm;
  return { kind: 'table', travelTable, tablePitchDeg, toppedOutAngleDeg, wheelTravel };
}

/** The adjusters of the rear suspension. */
export function adjustersIn(setup: RearAdjusters): RearAdjusters {
  const { shockLength, shockMountShim, linkLength, pivotForward, pivotUp, axlePosition } = setup;
  return { shockLength, shockMountShim, linkLength, pivotForward, pivotUp, axlePosition };
}
