/** Rows as typed into figures that can be fitted, or the first row that cannot be and why. */
import type { Bike } from '../parts/bike.ts';
import { tyreDiameter } from '../parts/tyre.ts';
import { QUANTITIES } from '../units/all-quantities.ts';
import { parseQuantity } from '../units/parse-quantity.ts';
import { measureKindOf } from './kinds/all-kinds.ts';
import { measureStateOf } from './held/all-measure-states.ts';
import type { MeasureKind } from './held/measure-kind.ts';
import { MEASURE_PARTS } from './held/measure-parts.ts';
import { noMeasure, type NoMeasure } from './no-measure.ts';
import type { MeasureRow, MeasureSheet } from './sheet.ts';

/** A row with its figure read: in the file's unit, from the kind's own reference. */
export interface ReadRow {
  readonly index: number;
  readonly row: MeasureRow;
  readonly kind: MeasureKind;
  readonly measured: number;
  readonly sd: number;
}

/** More rows than this are no sheet of one bike. */
const MOST_ROWS = 2000;
/** Standard deviations above this say nothing, in the file's unit. */
const MOST_SD = 1e4;

/** Every row that is switched on, read; refused with the first that cannot be read or cannot be. */
export function readRows(
  { rows }: MeasureSheet,
  bike: Bike,
): { readonly ok: true; readonly rows: readonly ReadRow[] } | NoMeasure {
  if (rows.length > MOST_ROWS)
    return noMeasure('tooManyRows', null, { found: rows.length, limit: MOST_ROWS });
  const read: ReadRow[] = [];
  for (const [index, row] of rows.entries()) {
    if (row.off) continue;
    const found = readRow(row, index, bike);
    if ('ok' in found) return found;
    read.push(found);
  }
  return { ok: true, rows: read };
}

function readRow(row: MeasureRow, index: number, bike: Bike): ReadRow | NoMeasure {
  const kind = measureKindOf(row.kind);
  const wrong = wrongParts(row, kind, index, bike) ?? wrongState(row, kind, index);
  if (wrong !== null) return wrong;
  const sd = row.sd ?? kind.sd;
  if (kind.read !== 'exact' && !(sd > 0 && sd <= MOST_SD)) return noMeasure('sdWrong', index);
  if (!(row.outOfPlane >= 0 && row.outOfPlane <= kind.most)) return noMeasure('sdWrong', index);
  if (row.fromOther && kind.fromOther === null) return noMeasure('otherReferenceWrong', index);
  if (kind.read === 'size') {
    const size = tyreDiameter({ code: row.figure });
    if (!size.ok) return noMeasure('figureUnreadable', index, { unread: size.reason });
    return { index, row, kind, measured: size.value / 2, sd };
  }
  const typed = parseQuantity(`${row.figure} ${row.unit}`, kind.quantity, 'metric');
  if (!typed.ok) return noMeasure('figureUnreadable', index, { unread: typed.reason });
  const measured = row.fromOther && kind.fromOther !== null ? kind.fromOther.turn(typed.value) : typed.value;
  if (!(measured >= kind.least))
    return noMeasure('figureImpossible', index, { found: measured, limit: kind.least });
  if (!(measured <= kind.most))
    return noMeasure('figureImpossible', index, { found: measured, limit: kind.most });
  const whole = QUANTITIES[kind.quantity].counted === null || Number.isInteger(measured);
  return whole
    ? { index, row, kind, measured, sd }
    : noMeasure('figureImpossible', index, { found: measured });
}

function wrongParts(row: MeasureRow, { takes }: MeasureKind, index: number, bike: Bike): NoMeasure | null {
  const { parts } = row;
  const fits =
    parts.length === takes.length && parts.every((part, i) => takes[i].includes(MEASURE_PARTS[part].shape));
  if (!fits || new Set(parts).size < parts.length) return noMeasure('partsWrong', index);
  const missing = parts.find((part) => !MEASURE_PARTS[part].applies(bike));
  return missing === undefined ? null : noMeasure('partMissing', index, { part: missing });
}

function wrongState(
  { state, otherState }: MeasureRow,
  { betweenStates, quantity }: MeasureKind,
  index: number,
): NoMeasure | null {
  if (betweenStates ? otherState === null || otherState === state : otherState !== null)
    return noMeasure('statesWrong', index);
  return quantity === 'mass' && !measureStateOf(state).weighed ? noMeasure('notWeighedSo', index) : null;
}
