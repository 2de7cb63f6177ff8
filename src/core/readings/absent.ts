/** Why a reading has no number: a normal outcome, as data. */
import type { Refusal } from '../numeric/refusal.ts';

const REASONS = [
  'noMass',
  'centreOnGround',
  'neverSquats',
  'noSprings',
  /** The ride state is no balance of the springs. */
  'notCarried',
  'coilsClosed',
  'linksSilent',
  'deadPoint',
  'noClampDepth',
  'noLeastHeight',
  /** The ride state keeps the throttle open. */
  'throttleOpen',
  'slackImpossible',
  /** A shaft or hub drive. */
  'noRun',
  'stayCannotClose',
  'stayThroughAxle',
  /** No part that may touch the ground is measured. */
  'nothingMeasured',
  'noCrown',
  'nothingTouches',
] as const;

export type AbsentReason = (typeof REASONS)[number];

export type Absent = Refusal<AbsentReason>;

const ABSENT = Object.fromEntries(REASONS.map((reason) => [reason, { ok: false, reason }])) as Readonly<
  Record<AbsentReason, Absent>
>;

/** No number, for this reason. The same reason gives the same refusal, so that two can be compared. */
export function absent(reason: AbsentReason): Absent {
  return ABSENT[reason];
}

/** Whether a refusal is that of a reading. */
export function isAbsent(refusal: { readonly reason: string }): refusal is Absent {
  return REASONS.some((reason) => reason === refusal.reason);
}
