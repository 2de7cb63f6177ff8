/** How far an adjuster reaches on a bike: its limits by name turned into numbers, and steps held between them. */
import type { DefinedRange, Limit } from '../adjusters/definition/adjuster.ts';
import type { Setup } from '../adjusters/setup.ts';
import { shockLengthRange } from '../linkage/shock-length-range.ts';
import type { Bike } from '../parts/bike.ts';
import { rearTravelAsSet } from './rear-travel-as-set.ts';
import { travelWithin } from './travel-within.ts';

/** In the adjuster's metric unit. */
export interface AdjusterRange {
  readonly least: number;
  readonly most: number;
  readonly step: number;
}

/** No workshop changes a shock by more than this, mm. */
const WIDEST_SHOCK_CHANGE = 30;

const REACH: Readonly<Record<Limit, (bike: Bike, step: number, setup: Setup) => number>> = {
  shortestShock: ({ swingarm }, step) => shockLengthRange(swingarm, WIDEST_SHOCK_CHANGE, step).least,
  longestShock: ({ swingarm }, step) => shockLengthRange(swingarm, WIDEST_SHOCK_CHANGE, step).most,
  leastFrontTeeth: ({ drive }) => drive.leastFrontTeeth,
  slot: ({ swingarm }) => swingarm.slot,
  forkTravel: ({ fork }) => fork.travel,
  rearTravel: (bike, _step, setup) => rearTravelAsSet(bike, setup),
};

/**
 * The range of an adjuster on a bike as it is set, with its step. A limit by name reaches as far as that part of the bike
 * does: `rearTravel` with axle, shock, shim and links as `setup` has them, `shortestShock` and `longestShock` to the last
 * whole step at which the rear suspension closes while no other adjuster is turned.
 */
export function adjusterRange(
  { range }: { readonly range: DefinedRange },
  bike: Bike,
  setup: Setup,
): AdjusterRange {
  const step = typeof range.step === 'number' ? range.step : range.step(bike);
  const reach = (end: number | Limit): number =>
    typeof end === 'number' ? end : REACH[end](bike, step, setup);
  return { least: reach(range.least), most: reach(range.most), step };
}

/** Decimals kept of a value: enough for any adjuster's step, too few for rounding noise. */
const ADJUSTER_DECIMALS = 6;

/** The value `steps` steps on from `value`, held within the adjuster's range. */
export function stepAdjuster(
  adjuster: { readonly range: DefinedRange },
  { bike, setup }: { readonly bike: Bike; readonly setup: Setup },
  value: number,
  steps: number,
): number {
  const { least, most, step } = adjusterRange(adjuster, bike, setup);
  const moved = Number((value + steps * step).toFixed(ADJUSTER_DECIMALS));
  return Math.min(most, Math.max(least, moved));
}

/** Whether a value lies in a range; the end of a travel as a reading writes it lies within. */
export function isWithin(
  { range }: { readonly range: DefinedRange },
  { least, most }: AdjusterRange,
  value: number,
): boolean {
  const isTravel = range.most === 'rearTravel' || range.most === 'forkTravel';
  return value >= least && (isTravel ? travelWithin(value, most) : value) <= most;
}
