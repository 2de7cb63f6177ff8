/** What a search for a setup finds: plans with their steps, or why there are none. */
import type { Setup } from '../adjusters/setup.ts';
import type { NoStand } from '../riding/no-stand.ts';
import type { PlanAdjusterKey, Setting } from './problem.ts';
import type { PlanWarning } from './raised-warnings.ts';

export interface Turn {
  readonly adjuster: PlanAdjusterKey;
  readonly from: Setting;
  readonly to: Setting;
  readonly minutes: number;
}

/** Adjusters that are turned together, because the bike does not stand in between, and the readings afterwards. */
export interface PlanStep {
  readonly turns: readonly Turn[];
  /** Those of the targets in their order and metric unit; null where there is no number. */
  readonly readings: readonly (number | null)[];
}

export interface Plan {
  readonly setup: Setup;
  /** In working order; empty if the bike already meets the targets. */
  readonly steps: readonly PlanStep[];
  readonly minutes: number;
  /** How far the readings are from what they should be exactly, in changes that a rider notices, by weight. */
  readonly off: number;
  /** The readings of the targets, as after the last step. */
  readonly readings: readonly (number | null)[];
}

/** One target let out to a value that gives a plan. */
export interface Relaxation {
  readonly target: number;
  /** The reading of the plan that it gives, beyond the target by `by`; metric unit. */
  readonly to: number;
  readonly by: number;
  readonly plan: Plan;
}

/** One range let out to a value that gives a plan, with every target met. */
export interface WiderRange {
  readonly adjuster: PlanAdjusterKey;
  /** Beyond the range that was asked for by `by` and by `steps` steps; metric unit. */
  readonly to: number;
  readonly by: number;
  readonly steps: number;
  readonly plan: Plan;
}

/** How many combinations each check stopped, by the first that did. */
export interface Stops {
  readonly noStand: number;
  /** Why the first of those does not stand; null where all stand. */
  readonly whyNoStand: NoStand | null;
  /** By the target's place in the list. */
  readonly targets: readonly number[];
  readonly warnings: Readonly<Partial<Record<PlanWarning, number>>>;
}

export interface PlansFound {
  readonly ok: true;
  /** The best first, at most five, each unlike the others. */
  readonly plans: readonly Plan[];
  readonly tried: number;
  readonly total: number;
  readonly stops: Stops;
  /** Of no more than one target, the smallest; null where plans exist, or no single one is enough. */
  readonly relaxation: Relaxation | null;
  /** Of no more than one range, the one let out by the fewest steps; null where plans exist, or none was found. */
  readonly wider: WiderRange | null;
  /**
   * Of no more than one adjuster that may not be turned, the one that gives a plan when it is turned by the fewest steps,
   * counted from where it stands; null where plans exist, where a range is enough, or none was found.
   */
  readonly other: WiderRange | null;
  /** How many combinations with such an adjuster turned were tried, and whether that search came to its end. */
  readonly withOther: { readonly tried: number; readonly isWhole: boolean };
  /** How many combinations beyond the ranges were tried, and whether the search for `wider` came to its end. */
  readonly beyond: { readonly tried: number; readonly isWhole: boolean };
}
