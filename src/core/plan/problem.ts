/** What is asked of a search for a setup: targets in ride states, and adjusters with their ranges. */
import type { AdjusterKey, NumberAdjusterKey, Setup } from '../adjusters/setup.ts';
import type { TyreAdjuster } from '../adjusters/all-adjusters.ts';
import type { Refusal } from '../numeric/refusal.ts';
import type { Bike } from '../parts/bike.ts';
import type { Tyre } from '../parts/tyre.ts';
import type { Absent } from '../readings/absent.ts';
import type { NoStand } from '../riding/no-stand.ts';
import type { RideStateKey } from '../riding/states/all-ride-states.ts';

/**
 * What a reading should be, in its metric unit: a value or the start's own, each ± a tolerance; anything within a
 * window; or no less or no more than a value, which is the start's own where it is left out. A tolerance that is left
 * out is half the change that a rider notices.
 */
export type Wanted =
  | { readonly kind: 'value'; readonly value: number; readonly tolerance?: number }
  | { readonly kind: 'keep'; readonly tolerance?: number }
  | { readonly kind: 'window'; readonly least: number; readonly most: number }
  | { readonly kind: 'atLeast' | 'atMost'; readonly value?: number };

/** A reading in one ride state, by their keys. */
export interface Target {
  readonly reading: string;
  readonly state: RideStateKey;
  readonly want: Wanted;
  /** How much a miss counts against those of other targets; 1 where it is left out. */
  readonly weight?: number;
}

export type TyreKey = TyreAdjuster['key'];
export type PlanAdjusterKey = NumberAdjusterKey | 'chainLinks' | TyreKey;

/** Where a searched adjuster stands: its metric number, or the tyre. */
export type Setting = number | Tyre;

/** An adjuster that may be turned. What is left out is its own on this bike: range, step, usual minutes of work. */
export interface Choice {
  readonly adjuster: AdjusterKey;
  readonly available: boolean;
  readonly least?: number;
  readonly most?: number;
  readonly step?: number;
  readonly minutes?: number;
  /** Of a tyre, those that may be fitted instead of the present one. */
  readonly tyres?: readonly Tyre[];
}

/** The bike, how it is set before anything is turned, the targets, and what may be turned. */
export interface Problem {
  readonly bike: Bike;
  readonly setup: Setup;
  readonly targets: readonly Target[];
  readonly choices: readonly Choice[];
}

export type ProblemReason =
  | 'noTargets'
  | 'readingUnknown'
  | 'windowReversed'
  | 'toleranceNegative'
  | 'weightNotPositive'
  | 'nothingToKeep'
  | 'targetsContradict'
  | 'nothingAvailable'
  | 'adjusterTwice'
  | 'notAPart'
  | 'notOnThisBike'
  | 'noNumber'
  | 'placedByChain'
  | 'rangeReversed'
  | 'rangeTooWide'
  | 'stepNotPositive'
  | 'stepNotWhole'
  | 'minutesNegative'
  | 'noStepInRange'
  | 'noOtherTyre'
  | 'tyreImpossible'
  | 'tooMany'
  | 'inputNotANumber';

/**
 * Why there is nothing to search: with the target by its place in the list, the one it contradicts, or the adjuster.
 * For `tooMany`, `found` is the number of combinations and `adjuster` the one to hold.
 */
export type NoProblem = Refusal<
  ProblemReason,
  {
    readonly target?: number;
    readonly other?: number;
    readonly adjuster?: AdjusterKey;
    readonly least?: number;
    readonly most?: number;
    /** Why there is no reading to keep: the bike does not stand there, or has no such number. */
    readonly noStand?: NoStand;
    readonly absent?: Absent;
  }
>;

/** Why there is nothing to search, with what it is about. */
export function noProblem(reason: ProblemReason, about: Omit<NoProblem, 'ok' | 'reason'> = {}): NoProblem {
  return { ok: false, reason, ...about };
}
