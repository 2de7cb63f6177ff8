/** Whether a bike has what an adjuster sets. */
import type { Bike } from '../parts/bike.ts';
import type { Adjuster } from './all-adjusters.ts';
import type { Setup } from './setup.ts';

/** A bike without runs has no sprockets to change, one without links no rod; a value that is still set can be cleared. */
export function doesApply({ applies, key }: Adjuster, bike: Bike, setup: Setup): boolean {
  return applies === undefined || applies(bike, setup[key]);
}
