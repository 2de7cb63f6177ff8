/** Monotone cubic interpolation through measured points, with slopes and an inverse. */
import { fail, succeed, type Result } from './result.ts';

/** Why points cannot carry a monotone curve. */
export type CurveReason = 'tooFewPoints' | 'notANumber' | 'notIncreasing';

/**
 * A rising curve through points (x, y): piecewise cubic, one continuous slope, never overshooting
 * between points. Outside the points it goes on straight with the end slope.
 * Units are the caller's. Source: Fritsch and Carlson 1980, with the three-point weighted harmonic
 * slopes of Fritsch and Butland 1984 (PCHIP).
 */
export interface MonotoneCurve {
  readonly x: readonly number[];
  readonly y: readonly number[];
  readonly slope: readonly number[];
  /** Second derivative at the points, where it is known too: the pieces are then of fifth degree and it has no jumps. */
  readonly bend?: readonly number[];
}

/** Smallest slope kept at an end unless the caller says another, as a part of its own chord. */
const END_SLOPE_FLOOR = 0.5;

/**
 * Builds the curve; both x and y must rise strictly from point to point. Needs two points or more. `leastEndSlope` is
 * the smallest slope kept at an end, as a part of its own chord; with zero an end may be flat, and the curve has no
 * inverse beyond it.
 */
export function monotoneCurve(
  points: readonly { readonly x: number; readonly y: number }[],
  leastEndSlope = END_SLOPE_FLOOR,
): Result<MonotoneCurve, CurveReason> {
  const n = points.length;
  if (n < 2) return fail('tooFewPoints');
  const x = points.map((p) => p.x);
  const y = points.map((p) => p.y);
  if (!x.every(Number.isFinite) || !y.every(Number.isFinite)) return fail('notANumber');
  const step: number[] = [];
  const secant: number[] = [];
  for (let i = 0; i < n - 1; i++) {
    step.push(x[i + 1] - x[i]);
    secant.push((y[i + 1] - y[i]) / step[i]);
    if (!(step[i] > 0) || !(secant[i] > 0) || !Number.isFinite(secant[i])) return fail('notIncreasing');
  }
  if (n === 2) return succeed({ x, y, slope: [secant[0], secant[0]] });
  const slope: number[] = [endSlope(step[0], step[1], secant[0], secant[1])];
  for (let i = 1; i < n - 1; i++) {
    const before = 2 * step[i] + step[i - 1];
    const after = step[i] + 2 * step[i - 1];
    slope.push((before + after) / (before / secant[i - 1] + after / secant[i]));
  }
  slope.push(endSlope(step[n - 2], step[n - 3], secant[n - 2], secant[n - 3]));
  // One small kink can make an end flat, which would throw the straight continuation and its inverse far off.
  slope[0] = Math.max(slope[0], leastEndSlope * secant[0]);
  slope[n - 1] = Math.max(slope[n - 1], leastEndSlope * secant[n - 2]);
  return succeed({ x, y, slope });
}

function endSlope(h0: number, h1: number, d0: number, d1: number): number {
  // With rising chords this is always below 2·d0, so it cannot overshoot; the floor keeps it from being too flat.
  return ((2 * h0 + h1) * d0 - h0 * d1) / (h0 + h1);
}

function segmentAt(x: readonly number[], at: number): number {
  let low = 0;
  let high = x.length - 1;
  while (high - low > 1) {
    const mid = (low + high) >> 1;
    if (x[mid] <= at) low = mid;
    else high = mid;
  }
  return low;
}

/** The curve at one place: its height, slope and second derivative. */
export interface CurveAt {
  readonly value: number;
  /** Above zero; zero only at and beyond an end that may be flat. */
  readonly slope: number;
  /** Without bends at the points it jumps at each, where the later segment counts; zero outside the points. */
  readonly bend: number;
}

/** Height, slope and bend of the curve at x. */
export function curveAt(curve: MonotoneCurve, at: number): CurveAt {
  const { x, y, slope, bend } = curve;
  const last = x.length - 1;
  if (at < x[0]) return { value: y[0] + slope[0] * (at - x[0]), slope: slope[0], bend: 0 };
  if (at >= x[last]) return { value: y[last] + slope[last] * (at - x[last]), slope: slope[last], bend: 0 };
  const i = segmentAt(x, at);
  const h = x[i + 1] - x[i];
  if (bend !== undefined) return fifthDegreeAt({ x, y, slope, bend }, i, at - x[i]);
  const t = (at - x[i]) / h;
  const u = 1 - t;
  const chord = (y[i + 1] - y[i]) / h;
  return {
    value:
      y[i] * u * u * (1 + 2 * t) +
      slope[i] * h * t * u * u +
      y[i + 1] * t * t * (3 - 2 * t) -
      slope[i + 1] * h * t * t * u,
    slope: 6 * chord * t * (1 - t) + slope[i] * (1 - t) * (1 - 3 * t) + slope[i + 1] * t * (3 * t - 2),
    bend: (6 * chord * (1 - 2 * t) + slope[i] * (6 * t - 4) + slope[i + 1] * (6 * t - 2)) / h,
  };
}

/** The piece behind point i, `on` further: of fifth degree, with height, slope and bend of the points at its ends. */
function fifthDegreeAt({ x, y, slope, bend }: Required<MonotoneCurve>, i: number, on: number): CurveAt {
  const h = x[i + 1] - x[i];
  const rise = (y[i + 1] - y[i]) / h - slope[i] - (bend[i] * h) / 2;
  const turn = slope[i + 1] - slope[i] - bend[i] * h;
  const more = ((bend[i + 1] - bend[i]) * h) / 2;
  const third = (10 * rise - 4 * turn + more) / (h * h);
  const fourth = (-15 * rise + 7 * turn - 2 * more) / (h * h * h);
  const fifth = (6 * rise - 3 * turn + more) / (h * h * h * h);
  return {
    value: y[i] + on * (slope[i] + on * (bend[i] / 2 + on * (third + on * (fourth + on * fifth)))),
    slope: slope[i] + on * (bend[i] + on * (3 * third + on * (4 * fourth + on * 5 * fifth))),
    bend: bend[i] + on * (6 * third + on * (12 * fourth + on * 20 * fifth)),
  };
}

/** Relative step at which the search for x has reached the rounding of the numbers themselves. */
const INVERSE_STEP = 1e-15;
const INVERSE_ROUNDS = 100;

/** The one x at which the curve has height y. Straight outside the points; inside, Newton kept within the segment. */
export function curveInverse(curve: MonotoneCurve, height: number): number {
  const { x, y, slope } = curve;
  const last = x.length - 1;
  if (height <= y[0]) return x[0] + (height - y[0]) / slope[0];
  if (height >= y[last]) return x[last] + (height - y[last]) / slope[last];
  const i = segmentAt(y, height);
  let low = x[i];
  let high = x[i + 1];
  let at = low + ((high - low) * (height - y[i])) / (y[i + 1] - y[i]);
  for (let round = 0; round < INVERSE_ROUNDS; round++) {
    const here = curveAt(curve, at);
    const error = here.value - height;
    if (error === 0) return at;
    if (error > 0) high = at;
    else low = at;
    const newton = at - error / here.slope;
    const next = newton > low && newton < high ? newton : (low + high) / 2;
    if (Math.abs(next - at) <= INVERSE_STEP * Math.max(1, Math.abs(at))) return next;
    at = next;
  }
  return at;
}
