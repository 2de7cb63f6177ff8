/** The bikes that stand along an axis, kept, for tests that look at more of them than a reading. */
import { curveAlong, type Curve, type SweepAsked } from '../../src/core/effects/sweep.ts';
import { finalDriveRatio } from '../../src/core/readings/final-drive-ratio.ts';
import type { StandingBike } from '../../src/core/riding/stand-bike.ts';

export interface StandsAlong extends Omit<Curve, 'y' | 'key' | 'yQuantity' | 'yUnit'> {
  readonly stances: readonly StandingBike[];
}

/** The same places as those of a curve, with the bike at each. */
export function standAlong(asked: SweepAsked): StandsAlong {
  const all: StandingBike[] = [];
  // A reading that is only the number of the bike it is read from.
  const { y, xQuantity, xUnit, x, lowStop, highStop } = curveAlong(asked, {
    ...finalDriveRatio,
    read: (on) => all.push(on) - 1,
  });
  return { xQuantity, xUnit, x, lowStop, highStop, stances: y.map((number) => all[Number(number)]) };
}
