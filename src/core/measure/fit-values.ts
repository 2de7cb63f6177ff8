/** Weighted least squares: the values that suit the rows best, and what the rows fix of them. */
import { backSolved, forwardSolved, lowerFactor } from '../numeric/lower-factor.ts';
import { singularValues, type SingularValues } from '../numeric/singular-values.ts';
import { rowFigures, roughSlopes, rowSlopes, type AskedRow } from './row-figures.ts';
import { isOfPhoto, type Origin } from './held/unknowns.ts';

/** A row with what was read and its standard deviation, in the file's unit. */
export interface FitRow extends AskedRow {
  readonly measured: number;
  readonly sd: number;
}

export interface Fit {
  readonly origin: Origin;
  readonly rows: readonly FitRow[];
  readonly values: readonly number[];
  /** What the values make of each row. */
  readonly figures: readonly number[];
  /** Sum of squared residuals over their standard deviations. */
  readonly chiSquare: number;
  /** The unknowns that some row touches, by their places. */
  readonly touched: readonly number[];
  /** Slopes of the rows over their sd, by touched unknown, taken apart. */
  readonly parts: SingularValues;
  /** How many directions the rows fix. */
  readonly rank: number;
}

/** A slope below this is rounding: no row touches the unknown. */
const UNTOUCHED = 1e-8;
/** A direction whose singular value is below this part of the largest is free. */
const FREE = 1e-9;
const MOST_ROUNDS = 200;
const FIRST_DAMPING = 1e-3;
const LEAST_DAMPING = 1e-9;
const MOST_DAMPING = 1e12;
/** A step below this, mm or mrad, has arrived. */
const ARRIVED = 1e-9;
/** The longest step of one round, mm or mrad. */
const LONGEST_STEP = 150;
const MOST_POLISH = 8;
/**
 * While values are looked for on a photo, each of the bike's is held to where it began as loosely as by a row of this
 * standard deviation, mm or mrad: what no row fixes would run away along a bend, such as tyres without their sizes. The
 * undamped rounds behind it take no heed of this. Rows of tape and gauge alone need no hold, and would creep under it from
 * one fit to the next.
 */
const LOOSE_SD = 1000;

/**
 * The least sum of squares from `start`, by damped Gauss-Newton rounds, then by undamped ones in the directions that
 * the rows fix alone, so that all others keep what they had. Null where the bike cannot be held at the start.
 */
export function fitValues(origin: Origin, rows: readonly FitRow[], start: readonly number[]): Fit | null {
  const first = touchedBy(origin, rows, start);
  let now = descend(origin, rows, { from: [...start], home: start }, first);
  if (now === null || first === null) return null;
  // What the start's posture hides, such as a place ahead while the frame stands level, shows in another.
  const touched = touchedBy(origin, rows, now.values);
  if (touched === null) return null;
  if (touched.some((place) => !first.includes(place))) {
    now = descend(origin, rows, { from: now.values, home: start }, touched);
    if (now === null) return null;
  }
  let at = fitAt(origin, rows, now.values, touched);
  for (let round = 0; at !== null && round < MOST_POLISH; round++) {
    const step = undampedStep(at);
    if (Math.max(0, ...step.map(Math.abs)) < ARRIVED) break;
    const next = fitAt(origin, rows, withStep(at.values, touched, step), touched);
    if (next === null || !(next.chiSquare < at.chiSquare)) break;
    at = next;
  }
  return at;
}

/** What rows say of given values, without looking for better ones; null where the bike cannot be held so. */
export function fitAt(
  origin: Origin,
  rows: readonly FitRow[],
  values: readonly number[],
  touched: readonly number[] | null = touchedBy(origin, rows, values),
): Fit | null {
  const figures = rowFigures(origin, rows, values);
  const columns = touched === null ? null : columnsOf(origin, rows, values, touched, rowSlopes);
  if (figures === null || touched === null || columns === null) return null;
  const parts = singularValues(columns);
  const rank = parts.values.filter((size) => size > FREE * parts.values[0]).length;
  let chiSquare = 0;
  for (const [i, { measured, sd }] of rows.entries()) chiSquare += ((measured - figures[i]) / sd) ** 2;
  return { origin, rows, values, figures, chiSquare, touched, parts, rank };
}

/** The step to the least sum in the directions that are fixed, by touched unknown. */
function undampedStep({ rows, figures, parts, rank, touched }: Fit): number[] {
  const step = touched.map(() => 0);
  for (let k = 0; k < rank; k++) {
    const left = parts.left[k];
    let along = 0;
    for (const [i, { measured, sd }] of rows.entries()) along += (left[i] * (measured - figures[i])) / sd;
    const by = along / parts.values[k];
    for (let j = 0; j < step.length; j++) step[j] += by * parts.right[k][j];
  }
  return step;
}

interface Descent {
  readonly values: number[];
  readonly chiSquare: number;
}

function descend(
  origin: Origin,
  rows: readonly FitRow[],
  { from, home }: { readonly from: number[]; readonly home: readonly number[] },
  touched: readonly number[] | null,
): Descent | null {
  let values = from;
  if (touched === null) return null;
  const isPhoto = (place: number): boolean => isOfPhoto(origin.unknowns[place].key);
  const bends = touched.some(isPhoto);
  const holds = touched.map((place) => (bends && !isPhoto(place) ? 1 / LOOSE_SD ** 2 : 0));
  const sumWithHolds = (at: readonly number[]): number | null => {
    const sum = sumAt(origin, rows, at);
    const held = touched.reduce((all, place, j) => all + holds[j] * (at[place] - home[place]) ** 2, 0);
    return sum === null ? null : sum + held;
  };
  const first = sumWithHolds(values);
  if (first === null) return null;
  let chiSquare = first;
  let damping = FIRST_DAMPING;
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const figures = rowFigures(origin, rows, values);
    const columns = columnsOf(origin, rows, values, touched, roughSlopes);
    if (figures === null || columns === null) return { values, chiSquare };
    const residuals = rows.map(({ measured, sd }, i) => (measured - figures[i]) / sd);
    const product = columns.map((a, j) => columns.map((b, k) => dot(a, b) + (j === k ? holds[j] : 0)));
    const right = columns.map(
      (a, j) => dot(a, residuals) - holds[j] * (values[touched[j]] - home[touched[j]]),
    );
    let better: Descent | null = null;
    let size = 0;
    while (better === null && damping < MOST_DAMPING) {
      const factor = lowerFactor(
        product.map((row, j) => row.map((each, k) => (j === k ? each + damping : each))),
      );
      const whole = factor === null ? null : backSolved(factor, forwardSolved(factor, right));
      if (whole !== null) {
        const long = Math.max(0, ...whole.map(Math.abs));
        const step = long > LONGEST_STEP ? whole.map((each) => (each * LONGEST_STEP) / long) : whole;
        size = Math.max(0, ...step.map(Math.abs));
        const next = withStep(values, touched, step);
        const at = sumWithHolds(next);
        if (at !== null && at < chiSquare) better = { values: next, chiSquare: at };
      }
      damping = better === null ? damping * 8 : Math.max(LEAST_DAMPING, damping / 10);
      if (better === null && size < ARRIVED) return { values, chiSquare };
    }
    if (better === null) return { values, chiSquare };
    const gained = chiSquare - better.chiSquare;
    values = better.values;
    chiSquare = better.chiSquare;
    if (size < ARRIVED || gained < 1e-14 * chiSquare) return { values, chiSquare };
  }
  return { values, chiSquare };
}

function dot(a: readonly number[], b: readonly number[]): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += a[i] * b[i];
  return sum;
}

function withStep(values: readonly number[], touched: readonly number[], step: readonly number[]): number[] {
  const next = [...values];
  for (const [k, place] of touched.entries()) next[place] += step[k];
  return next;
}

/** Sum of squared residuals over their sd; null where the bike cannot be held with these values. */
function sumAt(origin: Origin, rows: readonly FitRow[], values: readonly number[]): number | null {
  const figures = rowFigures(origin, rows, values);
  if (figures === null) return null;
  let sum = 0;
  for (const [i, { measured, sd }] of rows.entries()) sum += ((measured - figures[i]) / sd) ** 2;
  return sum;
}

function touchedBy(origin: Origin, rows: readonly FitRow[], values: readonly number[]): number[] | null {
  const touched: number[] = [];
  for (let place = 0; place < values.length; place++) {
    const slopes = roughSlopes(origin, rows, values, place);
    if (slopes === null) return null;
    if (slopes.some((slope) => Math.abs(slope) > UNTOUCHED)) touched.push(place);
  }
  return touched;
}

/** Slopes of the rows over their sd, one list for each touched unknown. */
function columnsOf(
  origin: Origin,
  rows: readonly FitRow[],
  values: readonly number[],
  touched: readonly number[],
  slopesAt: typeof rowSlopes,
): number[][] | null {
  const columns: number[][] = [];
  for (const place of touched) {
    const slopes = slopesAt(origin, rows, values, place);
    if (slopes === null) return null;
    columns.push(slopes.map((slope, i) => slope / rows[i].sd));
  }
  return columns;
}
