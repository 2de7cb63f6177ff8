/** Rows of cells as CSV (RFC 4180), such that a spreadsheet reads it and runs nothing in it. */
import type { NumberStyle } from '../../core/units/number-style.ts';

/** A cell: a text, or a figure as it is written. */
export type Cell = string | { readonly figure: string };

/** With a decimal comma the columns part at semicolons, as spreadsheets of those countries expect. */
export function csvSeparator({ decimal }: NumberStyle): ',' | ';' {
  return decimal === ',' ? ';' : ',';
}

/** What a spreadsheet would take as the start of a formula, also behind invisible signs and in wide letters. */
const FORMULA = /^(?:[\s\p{Cf}]*[=+\-@\uff1d\uff0b\uff0d\uff20]|[\t\r\n])/u;
/** What parts columns in one country or another: no text may fall apart into cells where a file travels. */
const PARTS = /[",;\t\r\n]/;

/** One cell, quoted where it has to be. A text that a spreadsheet would take for a formula is marked as text. */
function cellText(cell: Cell): string {
  // Programs read the plain minus only.
  if (typeof cell !== 'string') return cell.figure.replace('\u2212', '-');
  const text = FORMULA.test(cell) ? `'${cell}` : cell;
  return PARTS.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}

/** The rows with a line end after each. */
export function csvText(rows: readonly (readonly Cell[])[], style: NumberStyle): string {
  const separator = csvSeparator(style);
  return rows.map((row) => `${row.map(cellText).join(separator)}\r\n`).join('');
}
