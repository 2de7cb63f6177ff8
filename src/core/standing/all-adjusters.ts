/** The adjusters: what a mechanic can adjust, all of them in one list. */
import type { Bike } from '../parts/bike.ts';
import type { AdjusterKey } from '../adjusters/setup.ts';
import { CHASSIS_ADJUSTERS } from './chassis-adjusters.ts';
import type { Adjuster, NumberAdjuster } from './adjuster.ts';
import { RIDING_ADJUSTERS } from './riding-adjusters.ts';
import { SPRING_ADJUSTERS } from './spring-adjusters.ts';

/** Ranges are those of common practice in a workshop; what geometry allows is found by the model itself. */
export const ADJUSTERS: readonly Adjuster[] = [
  ...CHASSIS_ADJUSTERS,
  ...SPRING_ADJUSTERS,
  ...RIDING_ADJUSTERS,
];

/** The adjuster of a key. Every key of a setup has one; the suite checks that. */
export function adjusterOf(key: AdjusterKey): Adjuster {
  const adjuster = ADJUSTERS.find((d) => d.key === key);
  if (adjuster === undefined) throw new Error(`No adjuster is named ${key}`);
  return adjuster;
}

/** Decimals kept of a set value: takes rounding noise away, far below any adjuster's step. */
const ADJUSTER_DECIMALS = 6;

/** The value `steps` steps on from `value`, held within the adjuster's range. */
export function steppedAdjuster(adjuster: NumberAdjuster, bike: Bike, value: number, steps: number): number {
  const { least, most, step } = adjuster.range(bike);
  const moved = Number((value + steps * step).toFixed(ADJUSTER_DECIMALS));
  return Math.min(most, Math.max(least, moved));
}
