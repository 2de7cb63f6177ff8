/** The rear suspension, whether from a table or from links: wheel travel to arm angle, stroke and motion ratio. */
import { radians } from '../units/convert.ts';
import type { RearAdjusters } from './link-adjustments.ts';
import { angleAtLength } from './arm-from-shock.ts';
import type { Layout, LinkLayout, TableLayout } from '../parts/rear-layout.ts';
import { beyondWay, linkRange, ROUNDING, STEEPEST_SINE, type LinkRange } from './link-range.ts';
import { links, shockTurned, type Links } from './links.ts';
import { noLinkage, type NoLinkage, type WayEnd } from './no-linkage.ts';
import { armPosition, rearSuspension, type ArmPosition, type RearSuspension } from './rear-suspension.ts';

interface SuspensionBase {
  readonly ok: true;
  /** Pivot to axle at the front end of its slot, and as it stands in its slot, mm. */
  readonly slotFrontArm: number;
  readonly arm: number;
  /** Nose-up pitch of the frame's axes against the ground while travel is counted, radians. */
  readonly framePitch: number;
  /** Sine of the arm's angle below level, hanging, with the adjusters as they stand. */
  readonly toppedOutSine: number;
  /** Rise of the axle from hanging to the end of the travel, square to the ground with the frame held, mm. */
  readonly wheelTravel: number;
  /** What ends it: the travel stated with a table, the shock's stroke, or the links before the shock closes. */
  readonly endsBy: 'statedTravel' | 'shockClosed' | WayEnd;
}

export interface TableSuspension extends SuspensionBase {
  readonly kind: 'table';
  readonly table: RearSuspension;
}

export interface LinkSuspension extends SuspensionBase {
  readonly kind: 'links';
  readonly links: Links;
  /** The links' way as far as the shock's stroke needs it; `linkRange` finds the whole. */
  readonly range: LinkRange;
  /** Eye to eye while the wheel hangs, mm. */
  readonly toppedOutLength: number;
}

export type Suspension = TableSuspension | LinkSuspension;

/** The suspension at some travel, whether from a table or from links. */
export type SuspensionAt = ArmPosition;

/**
 * Rear suspension of a layout with its adjusters set, on a swingarm `length` mm long with the axle at the front of
 * its slot. A table has no mounts: a shim counts there as a longer shock, rod and eccentric are refused. Refused also
 * when the table is unusable, the links cannot close or cannot hold the shock, or the arm would stand upright.
 */
export function suspension(layout: Layout, length: number, adjusters: RearAdjusters): Suspension | NoLinkage {
  const arm = length + adjusters.axlePosition;
  if (!Number.isFinite(arm)) return noLinkage('inputNotANumber');
  if (!(arm > 0 && length > 0))
    return noLinkage('swingarmCannotReach', { found: Math.min(arm, length), limit: 0 });
  return layout.kind === 'table'
    ? tableSuspension(layout, length, adjusters)
    : linkSuspension(layout, length, arm, adjusters);
}

function tableSuspension(
  layout: TableLayout,
  length: number,
  adjusters: RearAdjusters,
): TableSuspension | NoLinkage {
  const { linkLength, pivotForward, pivotUp } = adjusters;
  for (const turnedBy of [linkLength, pivotForward, pivotUp])
    if (turnedBy !== 0) return noLinkage('adjusterNeedsLinks', { found: turnedBy });
  const table = rearSuspension(
    layout,
    length,
    adjusters.shockLength + adjusters.shockMountShim,
    adjusters.axlePosition,
  );
  if (!table.ok) return { ...table, end: 'rear' };
  return {
    ok: true,
    kind: 'table',
    table,
    slotFrontArm: length,
    arm: table.arm,
    framePitch: table.tablePitch,
    toppedOutSine: table.toppedOutSine,
    wheelTravel: table.wheelTravel,
    endsBy: 'statedTravel',
  };
}

function linkSuspension(
  layout: LinkLayout,
  length: number,
  arm: number,
  adjusters: RearAdjusters,
): LinkSuspension | NoLinkage {
  const made = links(layout, adjusters);
  if (!made.ok) return made;
  const framePitch = radians(layout.framePitchDeg);
  const range = linkRange(made, framePitch, 'stroke');
  if (!range.ok) return range;
  const hanging = angleAtLength(made, range, made.fullLength);
  if (!hanging.ok) return hanging;
  const closed = angleAtLength(made, range, made.closedLength);
  if (!closed.ok && closed.reason !== 'shockTooShort') return closed;
  const highest = closed.ok ? closed.angle : range.low.angle;
  const toppedOutSine = Math.sin(hanging.angle + framePitch);
  return {
    ok: true,
    kind: 'links',
    links: made,
    range,
    toppedOutLength: made.fullLength,
    slotFrontArm: length,
    arm,
    framePitch,
    toppedOutSine,
    wheelTravel: arm * (toppedOutSine - Math.sin(highest + framePitch)),
    endsBy: closed.ok ? 'shockClosed' : range.low.why,
  };
}

/** The same suspension with the axle elsewhere in its slot, `axlePosition` mm back; nothing of shock and links changes. */
export function withAxleAt(of: Suspension, axlePosition: number): Suspension {
  const arm = of.slotFrontArm + axlePosition;
  // The travel ends at an angle of the arm, and further back the axle rises by more on the way there.
  const wheelTravel = (of.wheelTravel * arm) / of.arm;
  return of.kind === 'table'
    ? { ...of, arm, wheelTravel, table: { ...of.table, arm, wheelTravel } }
    : { ...of, arm, wheelTravel };
}

/**
 * The suspension after the axle has risen `travelUsed` mm from hanging, square to the ground with the frame held.
 * Refused where the arm would stand upright, beyond the way of the links, and well beyond the shock's stroke.
 */
export function suspensionAt(of: Suspension, travelUsed: number): SuspensionAt | NoLinkage {
  if (of.kind === 'table') return armPosition(of.table, travelUsed);
  const sine = of.toppedOutSine - travelUsed / of.arm;
  if (!(Math.abs(sine) <= STEEPEST_SINE + ROUNDING))
    return noLinkage('swingarmCannotReach', { found: travelUsed });
  const angle = Math.asin(sine) - of.framePitch;
  const beyond = beyondWay(of.range, angle);
  if (beyond !== null) return beyond;
  const cos = Math.cos(angle);
  const sin = Math.sin(angle);
  const at = shockTurned(of.links, cos, sin);
  if (at === null) return noLinkage('armBeyondLinks', { found: angle, because: 'rodAndRockerInLine' });
  // As `motionRatio` and `motionRatioSlope` have it, by the sine that is known.
  const cosGround = Math.sqrt(1 - sine * sine);
  const rise = of.arm * cosGround;
  return {
    ok: true,
    angle,
    cos,
    sin,
    shockStroke: of.toppedOutLength - at.length,
    lever: at.slope,
    leverSlope: at.bend,
    motionRatio: at.slope / rise,
    motionRatioSlope: -(at.bend + (at.slope * sine) / cosGround) / (rise * rise),
  };
}

/** Change of the arm's angle per mm of travel used, radians; below zero, since the angle counts downward. */
export function armAnglePerTravel(of: Suspension, travelUsed: number): number {
  const sine = of.toppedOutSine - travelUsed / of.arm;
  return -1 / (of.arm * Math.sqrt(1 - sine * sine));
}
