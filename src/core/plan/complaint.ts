/** What a rider complains of: where on the lap, what the bike does, and what a mechanic tries first. */
import type { RideStateKey } from '../riding/states/all-ride-states.ts';
import type { PlanAdjusterKey } from './problem.ts';

/** Where it happens, in the order of a corner. */
export type Place = 'braking' | 'turnIn' | 'midCorner' | 'gas' | 'straight';

/** An adjuster with the steps that a first try takes, below zero for less of it. */
export interface FirstTry {
  readonly adjuster: PlanAdjusterKey;
  readonly steps: number;
}

/** Every line of it is common practice, no source. */
export interface Complaint {
  readonly key: string;
  readonly place: Place;
  /** What the rider says, in the rider's words. */
  readonly says: string;
  /** The end that is adjusted first: a rule of feel. */
  readonly end: 'front' | 'rear';
  /** The reading in which a remedy shows, the ride state it is taken in, and which way it has to go. */
  readonly reading: string;
  readonly state: RideStateKey;
  readonly better: 'more' | 'less';
  /** What to look at before anything is turned. */
  readonly ruleOut: string;
  readonly tries: readonly FirstTry[];
}
