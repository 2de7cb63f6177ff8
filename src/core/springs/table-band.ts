/** How well a measured travel table tells the motion ratio and, with the springs in, the wheel rate. */
import { tableCurve, tableTravel } from '../linkage/rear-suspension.ts';
import { suspensionAt, type TableSuspension } from '../linkage/suspension.ts';
import { spreadAt, type MeasuredCurve } from '../linkage/measured-curve.ts';
import { wheelRate } from '../linkage/leverage.ts';
import type { TravelRow } from '../parts/rear-layout.ts';
import type { Machine } from '../standing/machine.ts';
import { springForce, springRate } from './spring-law.ts';
import type { SprungMachine } from './sprung-machine.ts';

/** Half the 95 % band on average over the travel and where it is widest, as part of the figure's mean over the travel. */
export interface Band {
  readonly mean: number;
  readonly most: number;
}

export interface TableBand {
  readonly ratio: Band;
  /** Null while the springs are not known. */
  readonly rate: Band | null;
}

/** 95 % of a normal distribution lie within this many standard deviations. */
const BAND = 1.96;
/** Places of the travel that are looked at. */
const PLACES = 49;

/**
 * The bands of motion ratio and wheel rate over the travel, both square to the ground with the frame held as travel is
 * counted, from the covariance of stroke, ratio and its change: rate = spring rate · ratio² + force · change. Null where
 * the rear suspension is no table, or its rows are exact.
 */
export function tableBand(
  { rear }: Machine,
  rows: readonly TravelRow[],
  sprung: SprungMachine | null,
): TableBand | null {
  const measured = tableCurve(rows)?.measured ?? null;
  if (rear.kind !== 'table' || measured === null) return null;
  const most = sprung === null ? rear.wheelTravel : sprung.most.rear;
  const found = Array.from({ length: PLACES }, (_, i) =>
    deviationsAt(rear, measured, sprung, (most * i) / (PLACES - 1)),
  );
  if (found.includes(null)) return null;
  const all = found.filter((each) => each !== null);
  return {
    ratio: bandOf(all.map(({ ratio }) => ratio)),
    rate: sprung === null ? null : bandOf(all.flatMap(({ rate }) => (rate === null ? [] : [rate]))),
  };
}

/**
 * Standard deviation of motion ratio (without unit) or wheel rate (N/mm) at rear travels, mm, from the ± of the table alone;
 * null where the rear suspension is no table with a ±, and at a travel that it does not reach.
 */
export function tableDeviations(
  { rear }: Machine,
  rows: readonly TravelRow[],
  sprung: SprungMachine | null,
  figure: 'ratio' | 'rate',
  travels: readonly number[],
): readonly (number | null)[] | null {
  const measured = tableCurve(rows)?.measured ?? null;
  if (rear.kind !== 'table' || measured === null) return null;
  return travels.map((travel) => deviationsAt(rear, measured, sprung, travel)?.[figure]?.[1] ?? null);
}

/** A figure and its standard deviation. */
type Deviation = readonly [figure: number, deviation: number];

function deviationsAt(
  rear: TableSuspension,
  measured: MeasuredCurve,
  sprung: SprungMachine | null,
  travel: number,
): { readonly ratio: Deviation; readonly rate: Deviation | null } | null {
  const perMm = rear.table.tableArm / rear.table.arm;
  const at = suspensionAt(rear, travel);
  if (!at.ok) return null;
  const spread = spreadAt(measured, tableTravel(rear.table, travel));
  const ratio: Deviation = [at.motionRatio, perMm * Math.sqrt(spread.ratio)];
  if (sprung === null) return { ratio, rate: null };
  const [force, rate] = [springForce(sprung.shock, at.shockStroke), springRate(sprung.shock, at.shockStroke)];
  const byStroke = rate * at.motionRatioSlope;
  const byRatio = 2 * rate * at.motionRatio * perMm;
  const byChange = force * perMm * perMm;
  const variance =
    byStroke ** 2 * spread.stroke +
    byRatio ** 2 * spread.ratio +
    byChange ** 2 * spread.change +
    2 * byStroke * (byRatio * spread.strokeRatio + byChange * spread.strokeChange) +
    2 * byRatio * byChange * spread.ratioChange;
  return {
    ratio,
    rate: [wheelRate(rate, force, at.motionRatio, at.motionRatioSlope), Math.sqrt(Math.max(0, variance))],
  };
}

function bandOf(found: readonly Deviation[]): Band {
  const mean = found.reduce((sum, [figure]) => sum + Math.abs(figure), 0) / found.length;
  const halves = found.map(([, deviation]) => (BAND * deviation) / mean);
  return { mean: halves.reduce((sum, half) => sum + half, 0) / halves.length, most: Math.max(...halves) };
}
