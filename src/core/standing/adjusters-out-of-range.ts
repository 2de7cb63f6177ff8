/** Adjusters that stand beyond their range, as only a file or a changed bike can hold them. */
import { ADJUSTERS, type NumberAdjuster } from '../adjusters/all-adjusters.ts';
import { doesApply } from '../adjusters/does-apply.ts';
import type { Setup } from '../adjusters/setup.ts';
import type { Bike } from '../parts/bike.ts';
import { QUANTITIES } from '../units/all-quantities.ts';
import { adjusterRange, isWithin } from './adjuster-range.ts';

export interface OutOfRange {
  readonly adjuster: NumberAdjuster;
  /** In the adjuster's metric unit, as the ends of its range. */
  readonly value: number;
  readonly least: number;
  readonly most: number;
}

/** The adjusters of a setup that stand beyond their range on this bike, in the order of the list. */
export function adjustersOutOfRange(bike: Bike, setup: Setup): OutOfRange[] {
  return ADJUSTERS.flatMap((adjuster) => {
    if (adjuster.holds !== 'number' && adjuster.holds !== 'wholeNumber') return [];
    if (!doesApply(adjuster, bike, setup)) return [];
    const value = setup[adjuster.key];
    const range = adjusterRange(adjuster, bike, setup);
    if (isWithin(adjuster, range, value)) return [];
    const { least, most } = range;
    const { indistinct } = QUANTITIES[adjuster.quantity];
    return value < least - indistinct || value > most + indistinct ? [{ adjuster, value, least, most }] : [];
  });
}
