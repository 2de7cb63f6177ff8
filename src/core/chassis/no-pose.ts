/** The reasons for which a bike has no pose: what cannot meet what. */
import type { TyreReason } from './tyre.ts';

export type NoPoseReason =
  | TyreReason
  | 'inputNotANumber'
  | 'axlesTooClose'
  | 'upsideDown'
  | 'axisFlat'
  | 'forkTooShort'
  | 'forkTravelBeyond'
  | 'rearTravelBeyond'
  | 'travelTableUnusable'
  | 'swingarmCannotReach'
  | 'pivotBehindPatch'
  | 'sprocketsOverlap'
  | 'teethImpossible'
  | 'massNegative';

/** Why there is no pose, with the numbers a person needs to see in the advice (mm, teeth, kg). */
export interface NoPose {
  readonly ok: false;
  readonly reason: NoPoseReason;
  /** What the number is that stands in the way, and what it would have to be, where there is such a number. */
  readonly found?: number;
  readonly limit?: number;
  /** Which end it concerns, where it concerns one. */
  readonly end?: 'front' | 'rear';
}

export function noPose(reason: NoPoseReason, details: Omit<NoPose, 'ok' | 'reason'> = {}): NoPose {
  return { ok: false, reason, ...details };
}
