/** From a sheet and a starting bike to the fit of its rows, or the row that cannot be fitted. */
import type { Setup } from '../adjusters/setup.ts';
import { machine } from '../standing/machine.ts';
import { measureStateOf, type MeasureStateKey } from './all-measure-states.ts';
import { fitValues, type Fit, type FitRow } from './fit-values.ts';
import { FLOOR_SLOPE } from './floor-slope.ts';
import { impossibleTriangle } from './impossible-triangle.ts';
import type { StartingBike } from './measured-bike.ts';
import { noMeasure, type NoMeasure } from './no-measure.ts';
import { readRows, type ReadRow } from './read-rows.ts';
import { rowFigures } from './row-figures.ts';
import { mirroredFits, type MirroredFit } from './second-answer.ts';
import type { MeasureSheet } from './sheet.ts';
import { originOf } from './unknowns.ts';

export interface FittedSheet {
  readonly ok: true;
  readonly fit: Fit;
  /** A different bike that fits as well; null where there is none. */
  readonly mirrored: MirroredFit | null;
  /** The rows of the sheet that were fitted, in the order of the fit. */
  readonly fitted: readonly ReadRow[];
}

/** A mirrored bike that fits better by this sum of squares is the bike: chance makes it so once in a hundred. */
const CLEARLY_BETTER = 6.63;

/** The least squares of the rows that are switched on; refused where a row cannot be or the starting bike does not stand. */
export function fitSheet(start: StartingBike, sheet: MeasureSheet): FittedSheet | NoMeasure {
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
  const found = fitValues(origin, rows, values);
  if (found === null) return noMeasure('noBike', null);
  const [mirrored = null] = mirroredFits(found);
  return mirrored !== null && mirrored.fit.chiSquare < found.chiSquare - CLEARLY_BETTER
    ? { ok: true, fit: mirrored.fit, mirrored: null, fitted }
    : { ok: true, fit: found, mirrored, fitted };
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
