/** The reasons for which a bike has no pose: what cannot meet what. */
import type { TyreReason } from '../parts/tyre.ts';

export type NoPoseReason =
  | TyreReason
  | 'inputNotANumber'
  | 'inputTooLarge'
  | 'axlesTooClose'
  | 'upsideDown'
  | 'axisFlat'
  | 'forkTooShort'
  | 'forkTravelBeyond'
  | 'rearTravelBeyond'
  | 'travelTableUnusable'
  | 'swingarmCannotReach'
  | 'axleOutOfSlot'
  | 'pivotBehindPatch'
  | 'sprocketsOverlap'
  | 'teethImpossible'
  | 'chainPitchImpossible'
  | 'guideImpossible'
  | 'countershaftBehindAxle'
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

/** A refusal; when the number in the way is none at all, that is the reason, and no NaN reaches the advice. */
export function noPose(reason: NoPoseReason, details: Omit<NoPose, 'ok' | 'reason'> = {}): NoPose {
  if (details.found !== undefined && !Number.isFinite(details.found))
    return { ok: false, reason: 'inputNotANumber', ...(details.end && { end: details.end }) };
  const { limit, ...rest } = details;
  return { ok: false, reason, ...rest, ...(limit !== undefined && Number.isFinite(limit) && { limit }) };
}
