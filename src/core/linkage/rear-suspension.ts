/** The rear suspension as one relation: shock length and wheel travel to the swingarm's angle in the frame. */
import { refuse } from '../numeric/refusal.ts';
import type { NoPose } from '../chassis/no-pose.ts';
import type { TableLayout, TravelRow } from '../parts/rear-layout.ts';
import { curveAt, curveInverse, monotoneCurve, type MonotoneCurve } from '../numeric/monotone-curve.ts';
import { radians } from '../units/convert.ts';
import type { ShockLever } from './leverage.ts';
import { STEEPEST_SINE } from './link-range.ts';

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
  /** Line pivot → axle below the frame's x axis, radians. */
  readonly angle: number;
  /** Shock pushed in from its own full length, mm. */
  readonly shockStroke: number;
  /**
   * Shock stroke per axle rise, square to the ground with the frame held as travel is counted (about 0.3 to 0.9), and
   * its change per mm.
   */
  readonly motionRatio: number;
  readonly motionRatioSlope: number;
}

/** A longer shock does not change the table, and making the curve through it takes longer than all the rest. */
const curves = new WeakMap<readonly TravelRow[], ReturnType<typeof monotoneCurve>>();

/** The curve through a table, shock stroke over wheel travel, worked out once. */
function curveOf(travelTable: readonly TravelRow[]): ReturnType<typeof monotoneCurve> {
  const known = curves.get(travelTable);
  if (known !== undefined) return known;
  const curve = monotoneCurve(travelTable.map((row) => ({ x: row.wheelTravel, y: row.shockStroke })));
  curves.set(travelTable, curve);
  return curve;
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
  const curve = curveOf(layout.travelTable);
  if (!curve.ok) return refuse('travelTableUnusable');
  // The table's first row is the shock as delivered, hanging; any other start would shift every length by itself.
  const [first] = layout.travelTable;
  if (first.wheelTravel !== 0 || first.shockStroke !== 0) return refuse('travelTableUnusable');
  const tablePitch = radians(layout.tablePitchDeg);
  const hanging = radians(layout.toppedOutAngleDeg) + tablePitch;
  if (!(Math.abs(hanging) < Math.PI / 2))
    return refuse('swingarmCannotReach', { end: 'rear', found: shockLength });
  const deliveredSine = Math.sin(hanging);
  const hangingTravel = shockLength === 0 ? 0 : curveInverse(curve.value, -shockLength);
  const toppedOutSine = deliveredSine - hangingTravel / length;
  const arm = length + axlePosition;
  if (!(Math.abs(toppedOutSine) < STEEPEST_SINE) || !(arm > 0))
    return refuse('swingarmCannotReach', { end: 'rear', found: shockLength });
  return {
    ok: true,
    curve: curve.value,
    tableArm: length,
    arm,
    tablePitch,
    deliveredSine,
    toppedOutSine,
    toppedOutStroke: curveAt(curve.value, length * (deliveredSine - toppedOutSine)).value,
    // Stated, like the table, with the axle at the slot's front: further back it rises by more.
    wheelTravel: (layout.wheelTravel * arm) / length,
  };
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
  const run = tableArm * Math.cos(angle + tablePitch);
  return {
    ok: true,
    angle,
    shockStroke: value - toppedOutStroke,
    lever: slope * run,
    leverSlope: -(bend * run * run + slope * tableArm * sine),
    motionRatio: (slope * tableArm) / arm,
    motionRatioSlope: bend * (tableArm / arm) ** 2,
  };
}
