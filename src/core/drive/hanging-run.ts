/** The slack lower run hanging by its own weight: a catenary that leaves both sprockets along their pitch circles. */
import type { NoSlack } from './run-slack.ts';
import type { Refusal } from '../numeric/refusal.ts';
import { highestBetween } from '../numeric/highest-between.ts';
import { solveBetween } from '../numeric/solve-between.ts';
import type { Point } from '../plane/point.ts';
import { frontTouch, rearTouch, runMiddle, spareOf, type LowerRun } from './lower-run.ts';

/** A hanging run in the frame of its LowerRun, whose y must point up for it to hang true. mm, radians. */
export interface HangingRun {
  readonly ok: true;
  readonly run: LowerRun;
  /** Angle of the chain's way forward where it leaves the rear sprocket and where it meets the front one. */
  readonly rearAngle: number;
  readonly frontAngle: number;
  /** Horizontal pull over weight per length: the catenary's parameter; null for a taut run. */
  readonly parameter: number | null;
  /** Chain below the middle of the taut run, square to the run. */
  readonly drop: number;
  /** Chain beyond the straight run's length: what was given, and how far the shape found misses it. */
  readonly spare: number;
  readonly residual: number;
}

/**
 * Why a run has no shape. `tooTight`: the chain is too short; `tooSlack`: it would hang down like a bag; `underGuide`: it
 * does not hang free, because the guide under the pivot presses it down.
 */
export type NoHangingRun = NoSlack | Refusal<'underGuide', { readonly spare: number }>;

/** Most turn of the chain between its ends, radians: beyond it hangs like a bag. */
const MOST_TURN = 2.2;
/** Steepest end of the run, radians, short of upright, where a catenary has no end. */
const STEEPEST = 1.5;
/** Angle to which the shape is found, radians: 1e-12 of a half metre is nothing. */
const ANGLE_STEP = 1e-14;
/** Spare chain below which the run is taut, mm: rounding hides the shape of less. */
const LEAST_SPARE = 1e-6;

/** Rise of asinh(tan) from one angle to another: a catenary's way along, in parameters. Exact for near angles. */
function wayAlong(from: number, to: number): number {
  const rise = 2 * Math.cos((from + to) / 2) * Math.sin((to - from) / 2);
  return Math.atanh(rise / (1 - Math.sin(from) * Math.sin(to)));
}

/** Rise of 1/cos from one angle to another: a catenary's way up, in parameters. Exact for near angles. */
function wayUp(from: number, to: number): number {
  return (2 * Math.sin((from + to) / 2) * Math.sin((to - from) / 2)) / (Math.cos(from) * Math.cos(to));
}

/** The shape that turns by `turn` between its ends: the middle angle at which it fits both touching points. */
function shapeTurning(run: LowerRun, turn: number) {
  const ends = (middle: number) => {
    const rearAngle = middle - turn / 2;
    const frontAngle = middle + turn / 2;
    const from = rearTouch(run, rearAngle);
    const to = frontTouch(run, frontAngle);
    return { rearAngle, frontAngle, dx: to.x - from.x, dy: to.y - from.y };
  };
  const steepest = STEEPEST - turn / 2;
  const found = solveBetween(
    (middle) => {
      const { rearAngle, frontAngle, dx, dy } = ends(middle);
      return (wayUp(rearAngle, frontAngle) * dx - wayAlong(rearAngle, frontAngle) * dy) / turn;
    },
    -steepest,
    steepest,
    ANGLE_STEP,
  );
  if (found.status !== 'solved') return null;
  const { rearAngle, frontAngle, dx } = ends(found.x);
  const parameter = dx / wayAlong(rearAngle, frontAngle);
  const length =
    (parameter * Math.sin(frontAngle - rearAngle)) / (Math.cos(rearAngle) * Math.cos(frontAngle));
  return { rearAngle, frontAngle, parameter, spare: spareOf(run, length, rearAngle, frontAngle) };
}

/**
 * How a lower run hangs with `spare` mm of chain beyond the taut length, the upper run being tight: the catenary
 * that leaves the rear pitch circle and meets the front one without a kink, the touching points moving as it sags.
 * Derivation: y = c·cosh(x/c), arc c·tan(angle); ends tangent to both circles; wraps counted in teeth. Weight does
 * not matter, only that all links weigh the same. Refused without spare, or when it would hang like a bag.
 */
export function hangingRun(run: LowerRun, spare: number): HangingRun | NoHangingRun {
  if (!Number.isFinite(spare)) return { ok: false, reason: 'notANumber', spare: 0 };
  if (spare < -LEAST_SPARE) return { ok: false, reason: 'tooTight', spare };
  const { angle } = run;
  if (spare <= LEAST_SPARE)
    return {
      ok: true,
      run,
      rearAngle: angle,
      frontAngle: angle,
      parameter: null,
      drop: 0,
      spare,
      residual: 0,
    };
  const most = Math.min(MOST_TURN, 2 * (STEEPEST - Math.abs(angle)));
  const widest = shapeTurning(run, most);
  if (widest === null) return { ok: false, reason: 'notConverged', spare };
  if (widest.spare < spare) return { ok: false, reason: 'tooSlack', spare };
  // Spare grows with the square of the turn, so its root is nearly a straight line.
  const wanted = Math.sqrt(spare);
  const found = solveBetween(
    (turn) => {
      if (turn === 0) return -wanted;
      const shape = shapeTurning(run, turn);
      return shape === null ? NaN : Math.sqrt(Math.max(0, shape.spare)) - wanted;
    },
    0,
    most,
    ANGLE_STEP,
  );
  const shape = found.status === 'solved' ? shapeTurning(run, found.x) : null;
  if (shape === null) return { ok: false, reason: 'notConverged', spare };
  const { rearAngle, frontAngle, parameter } = shape;
  const drop = dropAtMiddle(run, rearAngle, frontAngle, parameter);
  if (drop === null) return { ok: false, reason: 'notConverged', spare };
  return { ok: true, run, rearAngle, frontAngle, parameter, drop, spare, residual: spare - shape.spare };
}

/** The point of the catenary at which the chain runs forward at `angle`. */
function placeAt(run: LowerRun, rearAngle: number, parameter: number, angle: number): Point {
  const start = rearTouch(run, rearAngle);
  return {
    x: start.x + parameter * wayAlong(rearAngle, angle),
    y: start.y + parameter * wayUp(rearAngle, angle),
  };
}

/** Places along the run at which it is held against the guide, before the nearest is narrowed down. */
const GUIDE_PLACES = 33;

/**
 * Whether a hanging run keeps below the guide that it passes under. The guide's centre lies above the chain, so what the
 * chain keeps from it is the least distance of the centre from any tangent of the chain.
 */
export function hangsClear({ run, rearAngle, frontAngle, parameter }: HangingRun): boolean {
  const { guide } = run;
  if (guide === null || run.gap >= 0) return true;
  if (parameter === null) return run.bentBy === 0;
  const nearest = highestBetween(
    (angle) => {
      const at = placeAt(run, rearAngle, parameter, angle);
      return (guide.centre.x - at.x) * Math.sin(angle) - (guide.centre.y - at.y) * Math.cos(angle);
    },
    rearAngle,
    frontAngle,
    GUIDE_PLACES,
  );
  return -nearest.value >= guide.radius;
}

function dropAtMiddle(
  run: LowerRun,
  rearAngle: number,
  frontAngle: number,
  parameter: number,
): number | null {
  const middle = runMiddle(run);
  const cos = Math.cos(run.angle);
  const sin = Math.sin(run.angle);
  const found = solveBetween(
    (angle) => {
      const place = placeAt(run, rearAngle, parameter, angle);
      return (place.x - middle.x) * cos + (place.y - middle.y) * sin;
    },
    rearAngle,
    frontAngle,
    ANGLE_STEP,
  );
  if (found.status !== 'solved') return null;
  const place = placeAt(run, rearAngle, parameter, found.x);
  return (place.x - middle.x) * sin - (place.y - middle.y) * cos;
}

/**
 * Points of the hanging run for drawing, from the rear sprocket to the front one, evenly along the chain, in the
 * run's own frame, mm. `count` of two or more; both ends lie on the pitch circles.
 */
export function hangingPoints(hanging: HangingRun, count: number): Point[] {
  const { run, rearAngle, frontAngle, parameter } = hanging;
  const from = Math.tan(rearAngle);
  const to = Math.tan(frontAngle);
  const first = rearTouch(run, rearAngle);
  const last = frontTouch(run, frontAngle);
  return Array.from({ length: count }, (_, i) => {
    const part = i / (count - 1);
    if (parameter === null)
      return { x: first.x + part * (last.x - first.x), y: first.y + part * (last.y - first.y) };
    return placeAt(run, rearAngle, parameter, Math.atan(from + part * (to - from)));
  });
}
