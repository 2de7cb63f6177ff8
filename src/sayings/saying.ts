/** What a saying of the trade is: common practice in our own words, and the trials that it is held against. */
import type { Trial, Way } from '../core/effects/trial.ts';

/** One trial of a saying: which way the figure goes if the saying is right, or between which figures it lies. */
export type SayingTrial = Trial & {
  /** What is tried and looked at, in a few words without a direction of the figure. */
  readonly name: string;
} & ({ readonly claims: Way } | { readonly within: readonly [number, number] });

export interface Saying {
  readonly key: string;
  /** What people say, in our own words. */
  readonly says: string;
  readonly trials: readonly SayingTrial[];
  /** What decides, without a verdict. */
  readonly because: string;
  /** What of it cannot be computed; left out where all of it can. */
  readonly feel?: string;
}
