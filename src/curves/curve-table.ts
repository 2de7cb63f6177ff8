/** The curves as rows of numbers: few of them to be read on the page, all of them as a CSV file. */
import type { Absent } from '../core/readings/absent.ts';
import { absentWords } from '../words/absent-words.ts';
import { writeNumber, type NumberStyle } from '../core/units/number-style.ts';
import type { QuantityKey } from '../core/units/all-quantities.ts';
import { samePlace, type CurveSet } from './curve-set.ts';
import { csvText, type Cell } from '../words/kept/csv.ts';
import { withUnit } from '../words/kept/curve-words.ts';
import { BAND_REACH } from '../words/measure/spread-words.ts';
import { deviationAt, type SpreadBand } from './spread-band.ts';

/** One place in metric units; a value is null where that bike does not stand there. */
export interface CurveRow {
  readonly x: number;
  readonly values: readonly (number | Absent | null)[];
  /** The names of those that stand at this very place. */
  readonly here: readonly string[];
}

/** The head of the column that names who stands at the place of a row. */
export const HERE_HEAD = 'Stands here';

export function curveRows(set: CurveSet): CurveRow[] {
  const { curves } = set;
  const at = curves.map(({ curve }) => new Map(curve.x.map((x, i) => [x, curve.y[i]])));
  return [...new Set(at.flatMap((map) => [...map.keys()]))]
    .sort((a, b) => a - b)
    .map((x) => ({
      x,
      values: at.map((map) => map.get(x) ?? null),
      here: curves.flatMap(({ name, place }) => (place !== null && samePlace(set, place, x) ? [name] : [])),
    }));
}

/** The rows nearest to `count` even places, the first and the last among them, and those where somebody stands. */
export function fewRows(rows: readonly CurveRow[], count: number): CurveRow[] {
  if (rows.length <= count) return [...rows];
  const low = rows[0].x;
  const step = (rows[rows.length - 1].x - low) / (count - 1);
  const even = Array.from({ length: count }, (_, i) =>
    rows.reduce((a, b) => (Math.abs(b.x - low - i * step) < Math.abs(a.x - low - i * step) ? b : a)),
  );
  return rows.filter((row) => row.here.length > 0 || even.includes(row));
}

/** The heads of the columns with their units: the axis, then each curve by its name. */
export function columnHeads({ reading, axis, curves }: CurveSet, style: NumberStyle): string[] {
  return [
    withUnit(axis.label, axis.quantity, style),
    ...curves.map(({ name }) => withUnit(`${reading.label}, ${name.toLowerCase()}`, reading.quantity, style)),
  ];
}

/** Digits beyond those on the page, for whoever goes on computing with the file. */
const EXTRA_DIGITS = 4;

const reasonOf = (value: number | Absent | null): string =>
  value === null ? 'does not stand there' : typeof value === 'number' ? '' : absentWords(value);

/** Who stands at the place of a row, in few words. */
export function hereText({ here, values }: CurveRow): string {
  return here.length > 1 && here.length === values.length ? 'all' : here.join(', ');
}

/** One value as words on the page; a dash with nothing to say. */
export function cellText(value: number | Absent | null, quantity: QuantityKey, style: NumberStyle): string {
  return typeof value === 'number' ? writeNumber(value, quantity, style).digits : reasonOf(value);
}

/**
 * The rows as CSV in the user's unit and decimal sign. One column says who stands at the place of a row; a place without a number
 * is empty, and the last column says why. A measured bike's own curve, the first, has its ± beside it (19 times out of 20);
 * that is empty where no measurement fixes the figure.
 */
export function curveCsv(set: CurveSet, style: NumberStyle, spread: SpreadBand | null = null): string {
  const { reading, axis } = set;
  const number = (value: number, quantity: QuantityKey): Cell => ({
    figure: writeNumber(value, quantity, style, { extraDigits: EXTRA_DIGITS }).digits,
  });
  const names = set.curves.map(({ name }) => name);
  const besideOwn = (own: readonly Cell[], plusMinus: Cell): readonly Cell[] =>
    spread === null ? own : [own[0], plusMinus, ...own.slice(1)];
  const plusMinusAt = (x: number, value: number | Absent | null): Cell => {
    const u = spread === null || typeof value !== 'number' ? null : deviationAt(spread, x);
    return u === null ? '' : number(BAND_REACH * u, reading.quantity);
  };
  const [place, ...heads] = columnHeads(set, style);
  const rows: readonly (readonly Cell[])[] = [
    [
      place,
      ...besideOwn(heads, withUnit(`± of ${names[0].toLowerCase()}`, reading.quantity, style)),
      HERE_HEAD,
      'Why empty',
    ],
    ...curveRows(set).map(({ x, values, here }) => [
      number(x, axis.quantity),
      ...besideOwn(
        values.map((value) => (typeof value === 'number' ? number(value, reading.quantity) : '')),
        plusMinusAt(x, values[0]),
      ),
      here.join('; '),
      whyEmpty(values, names),
    ]),
  ];
  return csvText(rows, style);
}

/** The reasons of one row, with whom they hold for unless it is everybody. */
function whyEmpty(values: readonly (number | Absent | null)[], names: readonly string[]): string {
  const reasons = values.map(reasonOf);
  return [...new Set(reasons)]
    .filter((reason) => reason !== '')
    .map((reason) => {
      const whose = names.filter((_, i) => reasons[i] === reason);
      return whose.length === names.length ? reason : `${whose.join(', ')}: ${reason}`;
    })
    .join('; ');
}
