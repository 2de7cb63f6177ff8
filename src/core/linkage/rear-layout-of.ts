/** Layout and adjusters of the rear suspension as bike and setup hold them. */
import type { Swingarm } from '../chassis/bike.ts';
import type { Layout } from '../chassis/rear-layout.ts';
import type { Setup } from '../chassis/setup.ts';
import type { RearAdjusters } from './adjusters.ts';

/** The drawn links of a swingarm, or its table where none are drawn. */
export function rearLayout(swingarm: Swingarm): Layout {
  if (swingarm.links !== null) return swingarm.links;
  const { travelTable, tablePitchDeg, toppedOutAngleDeg, wheelTravel } = swingarm;
  return { kind: 'table', travelTable, tablePitchDeg, toppedOutAngleDeg, wheelTravel };
}

/** What the dials say of the rear suspension. */
export function adjustersIn(setup: Setup): RearAdjusters {
  const { shockLength, topShim, linkLength, pivotForward, pivotUp, axlePosition } = setup;
  return { shockLength, topShim, linkLength, pivotForward, pivotUp, axlePosition };
}
