/** The rear suspension as one relation: shock length and wheel travel to the swingarm's angle in the frame. */
import { refuse } from '../numeric/refusal.ts';
import type { NoPose } from '../chassis/no-pose.ts';
import type { TableLayout, TravelRow } from '../parts/rear-layout.ts';
import { curveAt, curveInverse, monotoneCurve, type MonotoneCurve } from '../numeric/monotone-curve.ts';
import { radians } from '../units/convert.ts';
import type { ShockLever } from './leverage.ts';
import { STEEPEST_SINE } from './link-range.ts';
import { isMeasured, measuredCurve, type MeasuredCurve } from './measured-curve.ts';

/** The rear suspension with shock length and axle position set, ready for any travel. */
export interface RearSuspension {
  readonly ok: true;
  readonly curve: MonotoneCurve;
  /** Pivot to axle as the table was measured, and as the axle stands in its slot now, mm. */
  readonly tableArm: number;
  readonly arm: number;
  /** Pitch of the frame's axes while the table was measured, radians. */
  readonly tablePitch: number;
  /** Sine of the arm's angle below level, hanging: as delivered, and with the shock length set. */
  readonly deliveredSine: number;
  readonly toppedOutSine: number;
  /** Height of the curve where the arm hangs with the shock length set, mm. */
  readonly toppedOutStroke: number;
  readonly wheelTravel: number;
}

/** Where the rear suspension is at some travel. */
export interface ArmPosition extends ShockLever {
  readonly ok: true;
  /** Line pivot → axle below the frame's x axis, radians, with its cosine and sine. */
  readonly angle: number;
  readonly cos: number;
  readonly sin: number;
  /** Shock pushed in from its own full length, mm. */
  readonly shockStroke: number;
  /**
   * Shock stroke per axle rise, square to the ground with the frame held as travel is counted (about 0.3 to 0.9), and
   * its change per mm.
   */
  readonly motionRatio: number;
  readonly motionRatioSlope: number;
}

/** The curve of a table; `measured` is null where its rows are exact. */
interface TableCurve {
  readonly curve: MonotoneCurve;
  readonly measured: MeasuredCurve | null;
}

/** A longer shock does not change the table, and making the curve through it takes longer than all the rest. */
const curves = new WeakMap<readonly TravelRow[], { readonly found: TableCurve | null }>();

/**
 * The curve of a table, shock stroke over wheel travel, worked out once: through rows that are exact, and what rows with a
 * ± make likely. Null for a table that does not begin at (0, 0) or does not rise.
 */
export function tableCurve(travelTable: readonly TravelRow[]): TableCurve | null {
  const known = curves.get(travelTable);
  if (known !== undefined) return known.found;
  const found = newCurve(travelTable);
  curves.set(travelTable, { found });
  return found;
}

function newCurve(rows: readonly TravelRow[]): TableCurve | null {
  // The table's first row is the shock as delivered, hanging; any other start would shift every length by itself.
  if (rows[0]?.wheelTravel !== 0 || rows[0].shockStroke !== 0) return null;
  if (isMeasured(rows)) {
    const measured = measuredCurve(rows);
    return measured === null ? null : { curve: measured.curve, measured };
  }
  const curve = monotoneCurve(rows.map((row) => ({ x: row.wheelTravel, y: row.shockStroke })));
  return curve.ok ? { curve: curve.value, measured: null } : null;
}

/** Shock stroke at a table's last row, mm, by its curve; that row's own where the table cannot be used, 0 without rows. */
export function tableStroke(travelTable: readonly TravelRow[]): number {
  if (travelTable.length === 0) return 0;
  const last = travelTable[travelTable.length - 1];
  const found = tableCurve(travelTable);
  return found === null ? last.shockStroke : curveAt(found.curve, last.wheelTravel).value;
}

/**
 * Rear suspension from a travel table, on a swingarm `length` mm long with the axle at the front of its slot. A shock
 * longer by d mm lets the arm hang where the table, carried on straight below its first row, has a stroke of −d.
 * Refused when the table does not begin at (0, 0) and rise from row to row, or the arm cannot reach where the longer
 * or shorter shock would hang it.
 */
export function rearSuspension(
  layout: Omit<TableLayout, 'kind'>,
  length: number,
  shockLength: number,
  axlePosition: number,
): RearSuspension | NoPose {
  const found = tableCurve(layout.travelTable);
  if (found === null) return refuse('travelTableUnusable');
  const { curve } = found;
  const tablePitch = radians(layout.tablePitchDeg);
  const hanging = radians(layout.toppedOutAngleDeg) + tablePitch;
  if (!(Math.abs(hanging) < Math.PI / 2))
    return refuse('swingarmCannotReach', { end: 'rear', found: shockLength });
  const deliveredSine = Math.sin(hanging);
  const hangingTravel = shockLength === 0 ? 0 : curveInverse(curve, -shockLength);
  const toppedOutSine = deliveredSine - hangingTravel / length;
  const arm = length + axlePosition;
  if (!(Math.abs(toppedOutSine) < STEEPEST_SINE) || !(arm > 0))
    return refuse('swingarmCannotReach', { end: 'rear', found: shockLength });
  return {
    ok: true,
    curve,
    tableArm: length,
    arm,
    tablePitch,
    deliveredSine,
    toppedOutSine,
    toppedOutStroke: curveAt(curve, length * (deliveredSine - toppedOutSine)).value,
    // Stated, like the table, with the axle at the slot's front: further back it rises by more.
    wheelTravel: (layout.wheelTravel * arm) / length,
  };
}

/** The table's own wheel travel, mm, where the axle as it stands in its slot has risen `travelUsed` mm from hanging. */
export function tableTravel(
  { toppedOutSine, deliveredSine, arm, tableArm }: RearSuspension,
  travelUsed: number,
): number {
  return tableArm * (deliveredSine - toppedOutSine + travelUsed / arm);
}

/**
 * Where the arm is after the axle has risen `travelUsed` mm from hanging, square to the ground with the frame
 * held. Refused beyond the travel the wheel has.
 */
export function armPosition(rear: RearSuspension, travelUsed: number): ArmPosition | NoPose {
  const sine = rear.toppedOutSine - travelUsed / rear.arm;
  if (!(Math.abs(sine) < STEEPEST_SINE))
    return refuse('swingarmCannotReach', { end: 'rear', found: travelUsed });
  const { arm, tableArm, tablePitch, deliveredSine, toppedOutStroke, curve } = rear;
  const { value, slope, bend } = curveAt(curve, tableArm * (deliveredSine - sine));
  const angle = Math.asin(sine) - tablePitch;
  const run = tableArm * Math.sqrt(1 - sine * sine);
  return {
    ok: true,
    angle,
    cos: Math.cos(angle),
    sin: Math.sin(angle),
    shockStroke: value - toppedOutStroke,
    lever: slope * run,
    leverSlope: -(bend * run * run + slope * tableArm * sine),
    motionRatio: (slope * tableArm) / arm,
    motionRatioSlope: bend * (tableArm / arm) ** 2,
  };
}
