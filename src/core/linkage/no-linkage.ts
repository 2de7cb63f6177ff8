/** Why a rear suspension does not exist, or cannot reach a position. */
import { refuse, type Refusal } from '../numeric/refusal.ts';
import type { NoPose } from '../chassis/no-pose.ts';

/** What ends the way of a linkage at one side. All but the first two are dead points. */
export type WayEnd =
  /** Nothing in the links: the shock's stroke ends first, and the search looks no further. */
  | 'beyondStroke'
  /** The arm stands upright: beyond, the axle cannot be told from its mirror image. */
  | 'armUpright'
  /** Rod and rocker lie in one line: beyond, the loop cannot close. */
  | 'rodAndRockerInLine'
  /** The rod points at the swingarm pivot: the rocker stands still. */
  | 'rodThroughPivot'
  /** The shock points at the rocker's pivot: turning the rocker does not move the shock. */
  | 'shockThroughRocker'
  /** The shock points at the swingarm pivot. */
  | 'shockThroughPivot'
  /** Rocker and swingarm move the two ends of the shock alike. */
  | 'shockEndsMoveAlike';

export type NoLinkageReason =
  | NoPose['reason']
  /** A rod, a rocker's arm or a mount's distance from its pivot is next to nothing. */
  | 'partHasNoLength'
  /** The shock's full length is not above its closed length, or its closed length not above zero. */
  | 'strokeImpossible'
  /** Rod and rocker were drawn in one line, so that the side on which they fold is unknown. */
  | 'drawnInLine'
  /** No position of the swingarm lets rod and rocker meet; `found` is the rod's length, `limit` the nearest that can. */
  | 'linkageCannotClose'
  /** As drawn the shock is at a dead point. */
  | 'drawnAtDeadPoint'
  /** The shock grows longer as the wheel rises. */
  | 'shockPulled'
  /** Fully extended the shock is longer than the links allow it to be, or shorter; `because` names the end of their way. */
  | 'shockTooLong'
  | 'shockTooShort'
  /** The arm is beyond what the links allow; `because` says why, `found` and `limit` are angles in radians. */
  | 'armBeyondLinks'
  /** This layout does not have the adjuster that is turned. */
  | 'adjusterNeedsLinks'
  /** The layout has no point of that name. */
  | 'pointUnknown'
  | 'armNotFound';

/** Why there is no answer; figures in mm, radians where said. `because` is what ends the way of the links. */
export type NoLinkage = Refusal<NoLinkageReason, { readonly because?: WayEnd }>;

/** A refusal of the rear suspension, which concerns the rear end. */
export function noLinkage(
  reason: NoLinkageReason,
  figures: Omit<NoLinkage, 'ok' | 'reason' | 'end'> = {},
): NoLinkage {
  return refuse(reason, { end: 'rear', ...figures });
}
