/** The curves as rows of numbers: few of them to be read on the page, all of them as a CSV file. */
import { ABSENT_WORDS, type AbsentReason } from '../core/readings/reading.ts';
import { writeNumber, type NumberStyle } from '../core/units/number-style.ts';
import type { QuantityKey } from '../core/units/quantity.ts';
import type { CurveSet } from './curve-set.ts';
import { withUnit } from './curve-words.ts';

/** One place in metric units; a value is null where that bike does not stand there. */
export interface CurveRow {
  readonly x: number;
  readonly values: readonly (number | AbsentReason | null)[];
}

export function curveRows({ curves }: CurveSet): CurveRow[] {
  const at = curves.map(({ curve }) => new Map(curve.x.map((x, i) => [x, curve.y[i]])));
  return [...new Set(at.flatMap((map) => [...map.keys()]))]
    .sort((a, b) => a - b)
    .map((x) => ({ x, values: at.map((map) => map.get(x) ?? null) }));
}

/** At most `count` rows, evenly picked, the first and the last among them. */
export function fewRows(rows: readonly CurveRow[], count: number): CurveRow[] {
  if (rows.length <= count) return [...rows];
  return Array.from({ length: count }, (_, i) => rows[Math.round((i * (rows.length - 1)) / (count - 1))]);
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

const reasonOf = (value: number | AbsentReason | null): string =>
  value === null ? 'does not stand there' : typeof value === 'string' ? ABSENT_WORDS[value] : '';

/** One value as words on the page; a dash with nothing to say. */
export function cellText(
  value: number | AbsentReason | null,
  quantity: QuantityKey,
  style: NumberStyle,
): string {
  return typeof value === 'number' ? writeNumber(value, quantity, style).digits : reasonOf(value);
}

/**
 * The rows as CSV (RFC 4180) in the user's unit and decimal sign; with a decimal comma the columns part at semicolons,
 * as spreadsheets of those countries expect. A place without a number is empty, and the last column says why.
 */
export function curveCsv(set: CurveSet, style: NumberStyle): string {
  const separator = style.decimal === ',' ? ';' : ',';
  const number = (value: number, quantity: QuantityKey): string =>
    // Programs read the plain minus only.
    writeNumber(value, quantity, style, { extraDigits: EXTRA_DIGITS }).digits.replace('\u2212', '-');
  const quoted = (text: string): string =>
    /["\r\n,;]/.test(text) && (text.includes(separator) || /["\r\n]/.test(text))
      ? `"${text.replaceAll('"', '""')}"`
      : text;
  const lines = [
    [...columnHeads(set, style), 'Why empty'],
    ...curveRows(set).map(({ x, values }) => [
      number(x, set.axis.quantity),
      ...values.map((value) => (typeof value === 'number' ? number(value, set.reading.quantity) : '')),
      [...new Set(values.map(reasonOf).filter((reason) => reason !== ''))].join('; '),
    ]),
  ];
  return lines.map((cells) => `${cells.map(quoted).join(separator)}\r\n`).join('');
}
