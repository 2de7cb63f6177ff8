/** A problem worked out: targets as intervals, adjusters as lists of values. */
import type { Reading } from '../readings/reading.ts';
import type { RideStateKey } from '../riding/states/all-ride-states.ts';
import type { Bike } from '../parts/bike.ts';
import type { Setup } from '../adjusters/setup.ts';
import type { PlanAdjusterKey, Setting } from './problem.ts';

/** In the metric unit of the reading. */
export interface PreparedTarget {
  readonly reading: Reading;
  readonly state: RideStateKey;
  readonly least: number;
  readonly most: number;
  /** What the reading should be exactly; null for a window, open on one side or not, in which every value is as good. */
  readonly aim: number | null;
  /** Weight over the change that a rider notices: misses of different quantities add up in it. */
  readonly perUnit: number;
}

export interface PreparedAdjuster {
  readonly key: PlanAdjusterKey;
  /** Whole steps from where it stands, rising. */
  readonly values: readonly Setting[];
  /** How many steps each of them lies from where it stands, below zero for less. */
  readonly steps: readonly number[];
  readonly start: Setting;
  readonly minutes: number;
  /** The ends of the range that was asked for, as far as whole steps reach; null for tyres. */
  readonly ends: { readonly least: number; readonly most: number } | null;
  /** The values so many steps outside that range which the bike still allows: the lower one first, none, one or two. */
  readonly beyond: (steps: number) => readonly number[];
  /** Beyond so many steps there are none. */
  readonly mostBeyond: number;
}

export interface Prepared {
  readonly ok: true;
  readonly bike: Bike;
  readonly setup: Setup;
  readonly targets: readonly PreparedTarget[];
  readonly adjusters: readonly PreparedAdjuster[];
  /** Those that may not be turned, each held where it stands, with their ranges beyond that; tyres are not among them. */
  readonly others: readonly PreparedAdjuster[];
  /** How many combinations there are. */
  readonly total: number;
}
