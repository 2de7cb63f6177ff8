/** From a sheet of measurements and a starting bike to the measured bike, with the ± of every reading. */
import { chanceOfSquares } from '../numeric/chi-square.ts';
import type { Setup } from '../adjusters/setup.ts';
import { machine } from '../standing/machine.ts';
import { measureStateOf, type MeasureStateKey } from './all-measure-states.ts';
import { buildBike } from './build-bike.ts';
import { fitValues, type Fit, type FitRow } from './fit-values.ts';
import { FLOOR_SLOPE } from './floor-slope.ts';
import { postureOf } from './hold-bike.ts';
import { impossibleTriangle } from './impossible-triangle.ts';
import type { MeasuredBike, MeasureStatus, RowOutcome, StartingBike, Suspicion } from './measured-bike.ts';
import { measuredReadings } from './measured-readings.ts';
import { nextMeasurements } from './next-measurements.ts';
import { noMeasure, type NoMeasure } from './no-measure.ts';
import { notFixedBy, unknownValues } from './not-fixed.ts';
import { readRows, type ReadRow } from './read-rows.ts';
import { rowFigures } from './row-figures.ts';
import { rowWorths } from './row-outcomes.ts';
import { mirroredFits, secondAnswer } from './second-answer.ts';
import type { MeasureSheet } from './sheet.ts';
import { suspicions } from './suspect-rows.ts';
import { originOf } from './unknowns.ts';

export interface MeasureRequest {
  /** Gives starting values only; what no row fixes keeps them. */
  readonly start: StartingBike;
  readonly sheet: MeasureSheet;
  /** The reading that the next measurement is to help most; null for none. */
  readonly wanted: string | null;
}

/** Rows disagree where chance alone would make them do so less often than this. */
const DISAGREES = 0.01;
/** A mirrored bike that fits better by this sum of squares is the bike: chance makes it so once in a hundred. */
const CLEARLY_BETTER = 6.63;

/**
 * Weighted least squares of the rows that are switched on, from the starting bike: the bike, its setup, and what each
 * reading and each row is worth. Every ± follows from the stated standard deviations alone. No answer where a row
 * cannot be, or where the starting bike does not stand.
 */
export function measureBike({ start, sheet, wanted }: MeasureRequest): MeasuredBike | NoMeasure {
  const read = readRows(sheet, start.bike);
  if (!read.ok) return read;
  const triangle = impossibleTriangle(read.rows);
  if (triangle !== null) {
    const [longest, ...others] = triangle;
    return noMeasure('triangleImpossible', longest, { withRows: others });
  }
  const setup = withExactRows(start.setup, read.rows);
  const made = machine(start.bike, setup);
  if (!made.ok) return noMeasure('startCannotStand', null, { stand: made });
  const origin = originOf(start.bike, setup, made, readInState(read.rows), sheet.gaugeZeroed);
  if (origin === null) return noMeasure('startCannotStand', null);
  const fitted = read.rows.filter(({ kind }) => kind.read !== 'exact');
  const values = origin.unknowns.map((unknown) => unknown.start);
  for (const { index, ...row } of fitted)
    if (rowFigures(origin, [row], values) === null) return noMeasure('partMissing', index);
  const rows: FitRow[] = sheet.gaugeZeroed ? [...fitted] : [...fitted, FLOOR_SLOPE];
  const fit = fitValues(origin, rows, values);
  if (fit === null) return noMeasure('noBike', null);
  return answer(fit, { sheet, fitted, wanted });
}

/** What an answer is given to. */
interface Asked {
  readonly sheet: MeasureSheet;
  readonly fitted: readonly ReadRow[];
  readonly wanted: string | null;
}

function answer(found: Fit, { sheet, fitted, wanted }: Asked): MeasuredBike | NoMeasure {
  const [mirrored] = mirroredFits(found);
  const turned = mirrored !== undefined && mirrored.fit.chiSquare < found.chiSquare - CLEARLY_BETTER;
  const fit = turned ? mirrored.fit : found;
  const { origin, values, rows, rank, chiSquare } = fit;
  const built = buildBike(postureOf(origin, values));
  const readings = measuredReadings(fit);
  if (built === null || readings === null) return noBike(fit, fitted);
  const toSpare = rows.length - rank;
  const chance = chanceOfSquares(chiSquare, toSpare);
  const notFixed = notFixedBy(fit);
  const second = mirrored === undefined || turned ? null : secondAnswer(fit, mirrored);
  return {
    ok: true,
    status: statusOf(chance, second !== null, rank === 0 || notFixed.length > 0),
    ...built,
    readIn: origin.readIn,
    readings,
    rows: outcomesOf(fit, sheet, fitted),
    unknowns: unknownValues(fit),
    notFixed,
    next: wanted === null ? [] : nextMeasurements(fit, wanted),
    second,
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
function outcomesOf(fit: Fit, { rows }: MeasureSheet, fitted: readonly ReadRow[]): readonly RowOutcome[] {
  const worths = rowWorths(fit);
  const suspected = suspicions(fit);
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

/** The state that readings are of: on its wheels where that is measured, else with the rider, else as in the papers. */
function readInState(rows: readonly ReadRow[]): MeasureStateKey {
  const settings = rows
    .filter(({ row, kind }) => kind.read === 'number' && !kind.anyState && row.state !== 'bothHanging')
    .map(({ row }) => measureStateOf(row.state).arm);
  if (settings.includes('loaded')) return 'onWheels';
  if (settings.includes('rider')) return 'riderOn';
  return settings.includes('makers') ? 'makersPosture' : 'onWheels';
}

/** The setup with the counts that the rows name. */
function withExactRows(setup: Setup, rows: readonly ReadRow[]): Setup {
  let counted = setup;
  for (const { kind, row, measured } of rows) {
    if (kind.read !== 'exact') continue;
    counted =
      row.parts[0] === 'frontSprocket'
        ? { ...counted, frontTeeth: measured }
        : { ...counted, rearTeeth: measured };
  }
  return counted;
}
