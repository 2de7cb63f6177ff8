/** The curve that a table measured within a ± makes likely, and how well it is known. */
import type { TravelRow } from '../parts/rear-layout.ts';
import { curveAt, type MonotoneCurve } from '../numeric/monotone-curve.ts';
import { backSolved, forwardSolved, lowerFactor, type LowerFactor } from '../numeric/lower-factor.ts';
import { priorCovariance, type Figure, type Order } from './ratio-prior.ts';

/** Variances and covariances of stroke (mm), motion ratio and the ratio's change (1/mm) at one place of the travel. */
export interface Spread {
  readonly stroke: number;
  readonly ratio: number;
  readonly change: number;
  readonly strokeRatio: number;
  readonly strokeChange: number;
  readonly ratioChange: number;
}

/** Shock stroke over wheel travel with its spread at the curve's own points. */
export interface MeasuredCurve {
  readonly curve: MonotoneCurve;
  readonly spreads: readonly Spread[];
}

/** Whether any row of a table was measured within a ±; all others are exact. */
export function isMeasured(rows: readonly TravelRow[]): boolean {
  return rows.some((row) => withinOf(row).some((within) => within > 0));
}

const withinOf = ({ wheelTravelPlusMinus = 0, shockStrokePlusMinus = 0 }: TravelRow) =>
  [wheelTravelPlusMinus, shockStrokePlusMinus] as const;

/** Standard deviation of what lies anywhere within ±1. */
const RECTANGULAR = 1 / Math.sqrt(3);
/** Even pieces of the curve: the posterior is far smoother than these. */
const PIECES = 32;
/** An exact row is met to this, mm; without it two exact rows close together would look like one. */
const EXACT = 1e-4;
/** The ratio's slope at a row weighs the wheel's ±, so the fit is done again with the slopes it has found. */
const ROUNDS = 3;
/** The least ratio that the curve may have anywhere, as part of its mean. */
const LEAST_RATIO = 0.05;
/** Places at which the least ratio may have to be held; a table that needs more is none. */
const MOST_HELD = 12;
/** Places of a piece that are looked at for its least ratio. */
const LOOKED_AT = 4;

/** What is known at one figure of the curve: its value as measured, or a ratio held so that the curve rises. */
interface Known {
  readonly figure: Figure;
  readonly value: number;
  /** Standard deviations of the row's own readings, mm; none for an exact row. */
  readonly own: readonly [number, number];
  readonly shares: boolean;
}

/**
 * The posterior of a Gaussian process with the prior of `ratio-prior.ts` through rows of which some have a ±. Both columns
 * count, σ² = σs² + (ds/dw)²·σw² with σ = ±/√3; rows with a ± share the error of the readings hanging, which are those of
 * the first row; the curve passes exactly through (0, 0). Null where the rows fall by more than their ± or no rising
 * curve fits them. The spread is that without holding the curve to rise. Source: Rasmussen and Williams, Gaussian
 * Processes for Machine Learning, chapter 2, from memory.
 */
export function measuredCurve(rows: readonly TravelRow[]): MeasuredCurve | null {
  const begun = begin(rows);
  if (begun === null) return null;
  const { free, measured, slopes, zero, ratio, travel } = begun;
  const places = Array.from({ length: PIECES + 1 }, (_, i) => (travel * i) / PIECES);
  const spreads = places.map((at) => spreadOf(free, at));
  const held: Known[] = [];
  for (let curve = curveOf(free, places); held.length <= MOST_HELD;) {
    const low = lowest(curve);
    if (low.slope > 0) return { curve, spreads };
    const least = { order: 1, at: low.at } as const;
    held.push({ figure: least, value: 2 * LEAST_RATIO * ratio, own: [0, 0], shares: false });
    const fit = fitted([...measured, ...held], [...slopes, ...held.map(() => 0)], zero, ratio, travel);
    if (fit === null) return null;
    curve = curveOf(fit, places);
  }
  return null;
}

/** A row that the others contradict. */
export interface RowOff {
  /** Its place in the table, from 0. */
  readonly row: number;
  /** Stroke as typed less what the other rows make of it, mm. */
  readonly off: number;
  /** What the ± of all rows explains of that, mm: three standard deviations. */
  readonly within: number;
}

/** Further off than this many standard deviations lies about one row in 400 by chance. */
const OFF_BY_CHANCE = 3;
/** With fewer rows behind the first a row and the bend of the curve cannot be told apart. */
const LEAST_JUDGED = 3;

/**
 * The row furthest, in standard deviations, from where all others put it; null where every one lies within what chance
 * allows, and for a table without a ±. Left out one by one in closed form: off = (K⁻¹y)ᵢ / (K⁻¹)ᵢᵢ with the variance
 * 1 / (K⁻¹)ᵢᵢ. Source: Rasmussen and Williams, Gaussian Processes for Machine Learning, 5.4.2, from memory.
 */
export function rowOff(rows: readonly TravelRow[]): RowOff | null {
  const begun = isMeasured(rows) ? begin(rows) : null;
  if (begun === null || begun.measured.length < LEAST_JUDGED) return null;
  const { factor, weights } = begun.free;
  const found = weights.map((weight, i): RowOff => {
    const learnt = forwardSolved(
      factor,
      weights.map((_, j) => (i === j ? 1 : 0)),
    );
    const inverse = learnt.reduce((sum, each) => sum + each * each, 0);
    return { row: i + 1, off: weight / inverse, within: OFF_BY_CHANCE / Math.sqrt(inverse) };
  });
  const [worst] = found.sort((a, b) => Math.abs(b.off) / b.within - Math.abs(a.off) / a.within);
  return Math.abs(worst.off) > worst.within ? worst : null;
}

/** What rows are made into before the curve is held to rise: null where they make no curve. */
function begin(rows: readonly TravelRow[]) {
  const [first, ...others] = rows;
  const last = rows[rows.length - 1];
  if (rows.length < 2 || !rows.every(isRow) || !rows.every((row, i) => i === 0 || rises(rows[i - 1], row)))
    return null;
  const travel = Math.max(...rows.map(({ wheelTravel }) => wheelTravel));
  const ratio = last.shockStroke / travel;
  if (!(travel > 0 && ratio > 0 && last.wheelTravel > 0)) return null;
  const zero = withinOf(first).map((within) => within * RECTANGULAR);
  const measured = others.map((row): Known => {
    const [wheel, shock] = withinOf(row);
    return {
      figure: { order: 0, at: row.wheelTravel },
      value: row.shockStroke,
      own: [wheel * RECTANGULAR, shock * RECTANGULAR],
      shares: wheel > 0 || shock > 0,
    };
  });
  let slopes: readonly number[] = measured.map(() => ratio);
  for (let round = 1; round < ROUNDS; round++) {
    const fit = fitted(measured, slopes, zero, ratio, travel);
    if (fit === null) return null;
    slopes = measured.map(({ figure }) => fit.mean({ order: 1, at: figure.at }));
  }
  const free = fitted(measured, slopes, zero, ratio, travel);
  return free === null ? null : { free, measured, slopes, zero, ratio, travel };
}

const isRow = (row: TravelRow): boolean =>
  [row.wheelTravel, row.shockStroke, ...withinOf(row)].every(Number.isFinite) &&
  withinOf(row).every((within) => within >= 0);

/** Whether a row may truly lie beyond the one before it, in both columns. */
function rises(before: TravelRow, row: TravelRow): boolean {
  const [wheelBefore, shockBefore] = withinOf(before);
  const [wheel, shock] = withinOf(row);
  return (
    row.wheelTravel - before.wheelTravel > -(wheelBefore + wheel) &&
    row.shockStroke - before.shockStroke > -(shockBefore + shock)
  );
}

/** What follows from all that is known. */
interface Fit {
  readonly factor: LowerFactor;
  readonly weights: readonly number[];
  readonly mean: (figure: Figure) => number;
  readonly covariances: (figures: readonly Figure[]) => readonly (readonly number[])[];
}

function fitted(
  known: readonly Known[],
  slopes: readonly number[],
  [zeroWheel, zeroShock]: readonly number[],
  ratio: number,
  travel: number,
): Fit | null {
  const prior = (a: Figure, b: Figure): number => priorCovariance(a, b, ratio, travel);
  const matrix = known.map((a, i) =>
    known.map((b, j) => {
      const shared = a.shares && b.shares ? zeroShock ** 2 + slopes[i] * slopes[j] * zeroWheel ** 2 : 0;
      const own = i === j ? a.own[1] ** 2 + (slopes[i] * a.own[0]) ** 2 + exactness(a.figure, travel) : 0;
      return prior(a.figure, b.figure) + shared + own;
    }),
  );
  const factor = lowerFactor(matrix);
  if (factor === null) return null;
  const offMean = known.map(({ figure, value }) => value - meanOf(figure, ratio));
  const weights = backSolved(factor, forwardSolved(factor, offMean));
  return {
    factor,
    weights,
    mean: (figure) =>
      known.reduce((sum, each, i) => sum + weights[i] * prior(each.figure, figure), meanOf(figure, ratio)),
    covariances: (figures) => covariancesOf(factor, known, figures, prior),
  };
}

/** Variance of what counts as exact: a stroke in mm², a ratio over the whole travel likewise. */
const exactness = ({ order }: Figure, travel: number): number =>
  order === 0 ? EXACT * EXACT : (EXACT / travel) ** 2;

const meanOf = ({ order, at }: Figure, ratio: number): number =>
  order === 0 ? ratio * at : order === 1 ? ratio : 0;

function covariancesOf(
  factor: LowerFactor,
  known: readonly Known[],
  figures: readonly Figure[],
  prior: (a: Figure, b: Figure) => number,
): number[][] {
  const learnt = figures.map((figure) =>
    forwardSolved(
      factor,
      known.map((each) => prior(each.figure, figure)),
    ),
  );
  return figures.map((a, i) =>
    figures.map((b, j) => learnt[i].reduce((rest, each, k) => rest - each * learnt[j][k], prior(a, b))),
  );
}

function spreadOf(fit: Fit, at: number): Spread {
  const orders: readonly Order[] = [0, 1, 2];
  const [[stroke, strokeRatio, strokeChange], [, ratio, ratioChange], [, , change]] = fit.covariances(
    orders.map((order) => ({ order, at })),
  );
  // Rounding may take what is known exactly a little below zero.
  const some = (variance: number): number => Math.max(0, variance);
  return {
    stroke: some(stroke),
    ratio: some(ratio),
    change: some(change),
    strokeRatio,
    strokeChange,
    ratioChange,
  };
}

function curveOf(fit: Fit, places: readonly number[]): MonotoneCurve {
  const all = (order: Order): number[] => places.map((at) => fit.mean({ order, at }));
  const y = all(0);
  y[0] = 0;
  return { x: places, y, slope: all(1), bend: all(2) };
}

/** The place of the least ratio, and whether the ratio there is above the least allowed. */
function lowest(curve: MonotoneCurve): { readonly at: number; readonly slope: number } {
  const { x, y } = curve;
  const travel = x[x.length - 1];
  const least = (LEAST_RATIO * y[y.length - 1]) / travel;
  let low = { at: 0, slope: Infinity };
  for (let i = 0; i <= PIECES * LOOKED_AT; i++) {
    const at = (travel * i) / (PIECES * LOOKED_AT);
    const { slope } = curveAt(curve, at);
    // Outside the points the slope is that of the end.
    if (slope < low.slope) low = { at, slope };
  }
  return { at: low.at, slope: low.slope - least };
}

/** The spread at a wheel travel, mm: between the curve's points in proportion, beyond them that of the end. */
export function spreadAt({ curve, spreads }: MeasuredCurve, travel: number): Spread {
  const span = curve.x[curve.x.length - 1];
  const place = Math.min(Math.max(travel / span, 0), 1) * PIECES;
  const i = Math.min(PIECES - 1, Math.floor(place));
  const [before, after] = [spreads[i], spreads[i + 1]];
  const on = place - i;
  const mixed = (key: keyof Spread): number => before[key] + on * (after[key] - before[key]);
  return {
    stroke: mixed('stroke'),
    ratio: mixed('ratio'),
    change: mixed('change'),
    strokeRatio: mixed('strokeRatio'),
    strokeChange: mixed('strokeChange'),
    ratioChange: mixed('ratioChange'),
  };
}
