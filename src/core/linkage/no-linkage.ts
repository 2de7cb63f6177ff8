/** The reasons for which a rear suspension does not exist or cannot be where it is asked to be. */
import { refuse, type Refusal } from '../numeric/refusal.ts';
import type { NoPose } from '../chassis/no-pose.ts';

/** What ends the way of a linkage at one side. All but the first two are dead points. */
export type WayEnd =
  /** Nothing of the links: the shock's own stroke ends before, and further was not looked. */
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
  /** The shock's full length is not above its closed length, or that is not above zero. */
  | 'strokeImpossible'
  /** Rod and rocker were drawn in one line, so that nothing tells on which side they fold. */
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
  /** The adjuster turned is one that this layout has not. */
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
