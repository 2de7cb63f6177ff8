/** From a sheet of measurements and a starting bike to the measured bike, with the ± of every reading. */
import { chanceOfSquares } from '../numeric/chi-square.ts';
import { buildBike } from './held/build-bike.ts';
import { fitSheet, type FittedSheet } from './fit-sheet.ts';
import type { Fit } from './fit-values.ts';
import { postureOf } from './held/hold-bike.ts';
import type { MeasuredBike, MeasureStatus, RowOutcome, Suspicion } from './measured-bike.ts';
import type { StartingBike } from './held/starting-bike.ts';
import { measuredReadings } from './measured-readings.ts';
import { nextMeasurements } from './next-measurements.ts';
import { noMeasure, type NoMeasure } from './no-measure.ts';
import { notFixedBy, unknownValues } from './not-fixed.ts';
import { photoOutcomes } from './photo-outcomes.ts';
import type { ReadRow } from './read-rows.ts';
import { rowWorths } from './row-outcomes.ts';
import { secondAnswer } from './second-answer.ts';
import type { MeasureSheet } from './sheet.ts';
import { suspicions } from './suspect-rows.ts';

export interface MeasureRequest {
  /** Gives starting values only; what no row fixes keeps them. */
  readonly start: StartingBike;
  readonly sheet: MeasureSheet;
  /** The reading that the next measurement is to help most; null for none. */
  readonly wanted: string | null;
}

/** Rows disagree where chance alone would make them do so less often than this. */
const DISAGREES = 0.01;

/**
 * Weighted least squares of the rows that are switched on, from the starting bike: the bike, its setup, and what each
 * reading and each row is worth. Every ± follows from the stated standard deviations alone. No answer where a row
 * cannot be, or where the starting bike does not stand.
 */
export function measureBike({ start, sheet, wanted }: MeasureRequest): MeasuredBike | NoMeasure {
  const fitted = fitSheet(start, sheet);
  return fitted.ok ? answer(fitted, sheet, wanted) : fitted;
}

function answer(
  { fit, mirrored, fitted }: FittedSheet,
  sheet: MeasureSheet,
  wanted: string | null,
): MeasuredBike | NoMeasure {
  const { origin, values, rows, rank, chiSquare } = fit;
  const built = buildBike(postureOf(origin, values));
  const readings = measuredReadings(fit);
  if (built === null || readings === null) return noBike(fit, fitted);
  const toSpare = rows.length - rank;
  const chance = chanceOfSquares(chiSquare, toSpare);
  const notFixed = notFixedBy(fit);
  const suspected = suspicions(fit);
  const second = mirrored === null ? null : secondAnswer(fit, mirrored);
  return {
    ok: true,
    status: statusOf(chance, second !== null, rank === 0 || notFixed.length > 0),
    ...built,
    readIn: origin.readIn,
    readings,
    rows: outcomesOf(fit, sheet, fitted, suspected),
    unknowns: unknownValues(fit),
    notFixed,
    next: wanted === null ? [] : nextMeasurements(fit, wanted),
    second,
    photos: photoOutcomes(fit, sheet.photos ?? [], suspected, fitted.length),
    agreement: { chiSquare, toSpare, chance },
  };
}

/** No bike stands by these rows: the row that the others suspect first is named. */
function noBike(fit: Fit, fitted: readonly ReadRow[]): NoMeasure {
  const first = [...suspicions(fit)].find(([at, { place }]) => place === 1 && at < fitted.length);
  if (first === undefined) return noMeasure('noBike', null);
  const [at, suspicion] = first;
  const suspected = inSheet(suspicion, fitted);
  return noMeasure('noBike', fitted[at].index, suspected === null ? {} : { suspected });
}

function statusOf(chance: number, second: boolean, free: boolean): MeasureStatus {
  if (chance < DISAGREES) return 'disagrees';
  if (second) return 'twoAnswers';
  return free ? 'notFixed' : 'solved';
}

/** One outcome for each row of the sheet, in its order. */
function outcomesOf(
  fit: Fit,
  { rows }: MeasureSheet,
  fitted: readonly ReadRow[],
  suspected: ReadonlyMap<number, Suspicion>,
): readonly RowOutcome[] {
  const worths = rowWorths(fit);
  return rows.map((row, index): RowOutcome => {
    const at = fitted.findIndex((each) => each.index === index);
    if (at < 0)
      return {
        measured: null,
        residual: null,
        sd: row.sd ?? 0,
        redundancy: null,
        smallestSlipRevealed: null,
        suspected: null,
      };
    const { measured, sd } = fitted[at];
    const { residual, redundancy, smallestSlipRevealed } = worths[at];
    return {
      measured,
      residual,
      sd,
      redundancy,
      smallestSlipRevealed,
      suspected: inSheet(suspected.get(at), fitted),
    };
  });
}

/** A suspicion with the sheet's own numbers of the rows. */
function inSheet(suspicion: Suspicion | undefined, fitted: readonly ReadRow[]): Suspicion | null {
  if (suspicion === undefined) return null;
  return { ...suspicion, alike: suspicion.alike.flatMap((at) => fitted[at]?.index ?? []) };
}
