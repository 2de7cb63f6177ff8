/** A problem worked out: targets as intervals, adjusters as lists of values. */
import type { Reading } from '../readings/reading.ts';
import type { RideStateKey } from '../riding/states/all-ride-states.ts';
import type { Bike } from '../parts/bike.ts';
import type { Setup } from '../adjusters/setup.ts';
import type { PlanAdjusterKey } from './problem.ts';

/** In the metric unit of the reading. */
export interface PreparedTarget {
  readonly reading: Reading;
  readonly state: RideStateKey;
  readonly least: number;
  readonly most: number;
  /** What the reading should be exactly; null for a window, in which every value is as good. */
  readonly aim: number | null;
  /** Weight over the change that a rider notices: misses of different quantities add up in it. */
  readonly perUnit: number;
}

export interface PreparedAdjuster {
  readonly key: PlanAdjusterKey;
  /** Whole steps from where it stands, rising. */
  readonly values: readonly number[];
  readonly start: number;
  readonly step: number;
  readonly minutes: number;
}

export interface Prepared {
  readonly ok: true;
  readonly bike: Bike;
  readonly setup: Setup;
  readonly targets: readonly PreparedTarget[];
  readonly adjusters: readonly PreparedAdjuster[];
  /** How many combinations there are. */
  readonly total: number;
}
