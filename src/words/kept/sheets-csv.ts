/** The setup sheets of a bike as a table for a spreadsheet: a row a sheet, with notes, adjusters and readings. */
import { ADJUSTERS } from '../../core/adjusters/all-adjusters.ts';
import { namedAdjusters } from '../../core/adjusters/named-adjusters.ts';
import type { Setup } from '../../core/adjusters/setup.ts';
import type { DriveKind } from '../../core/parts/drive-kind.ts';
import { READINGS } from '../../core/readings/all-readings.ts';
import { rideStateOf, type RideStateKey } from '../../core/riding/states/all-ride-states.ts';
import { shownUnit, type QuantityKey } from '../../core/units/all-quantities.ts';
import { writeNumber, type NumberStyle } from '../../core/units/number-style.ts';
import { csvText, type Cell } from './csv.ts';
import { COVERAGE } from '../plus-minus.ts';

/** What the table needs of a sheet. */
export interface TabledSheet {
  readonly day: string;
  readonly setup: Setup;
  readonly notes: Readonly<Record<string, string>>;
  /** Lines that the workshop added by itself. */
  readonly further: readonly { readonly name: string; readonly text: string }[];
  readonly readings: Readonly<Record<string, Readonly<Record<string, number>>>>;
  /** Standard deviations of those readings that were fixed by measuring. */
  readonly u?: Readonly<Record<string, Readonly<Record<string, number>>>>;
}

export interface SheetsTable {
  readonly sheets: readonly TabledSheet[];
  /** The notes by key and label, in their order. */
  readonly notes: readonly { readonly key: string; readonly label: string }[];
  /** The ride state whose readings are tabled. */
  readonly state: RideStateKey;
  readonly kind: DriveKind;
  /** Whether each reading that was measured on some sheet has its ± (95 %) in a column behind it. */
  readonly plusMinus: boolean;
}

/** Digits beyond those on the page, for whoever goes on computing with the file. */
const EXTRA_DIGITS = 4;
/** By which a spreadsheet knows that the text is UTF-8. */
const BYTE_ORDER_MARK = '\ufeff';

/** The table in the user's units and decimal sign, with units in the heads. An empty cell: nothing noted, or no answer. */
export function sheetsCsv(
  { sheets, notes, state, kind, plusMinus }: SheetsTable,
  style: NumberStyle,
): string {
  const head = (label: string, quantity: QuantityKey): string => {
    const { symbol } = shownUnit(quantity, style.system);
    return symbol === '' ? label : `${label} [${symbol}]`;
  };
  const figure = (value: number | null | undefined, quantity: QuantityKey): Cell =>
    value === null || value === undefined
      ? ''
      : { figure: writeNumber(value, quantity, style, { extraDigits: EXTRA_DIGITS }).digits };
  const adjusters = namedAdjusters(kind);
  const read = rideStateOf(state).label.toLowerCase();
  const ownLines = [...new Set(sheets.flatMap(({ further }) => further.map(({ name }) => name)))];
  const isSure = new Set(plusMinus ? sheets.flatMap(({ u }) => Object.keys(u?.[state] ?? {})) : []);
  const heads: Cell[] = [
    'Day',
    ...notes.map(({ label }) => label),
    ...ownLines,
    ...adjusters.map((adjuster) =>
      // Make and age of a tyre have its name too.
      adjuster.holds === 'tyre' ? `${adjuster.label}, size` : head(adjuster.label, adjuster.quantity),
    ),
    ...READINGS.flatMap(({ key, label, quantity }) => [
      head(`${label} (${read})`, quantity),
      ...(isSure.has(key) ? [head(`${label} (${read}), ± 95 %`, quantity)] : []),
    ]),
  ];
  const rows = sheets.map(({ day, setup, notes: noted, further, readings, u }): Cell[] => [
    day,
    ...notes.map(({ key }) => noted[key] ?? ''),
    ...ownLines.map((own) => further.flatMap(({ name, text }) => (name === own ? [text] : [])).join('\n')),
    ...ADJUSTERS.map((adjuster): Cell => {
      if (adjuster.holds !== 'tyre') return figure(setup[adjuster.key], adjuster.quantity);
      const tyre = setup[adjuster.key];
      if ('code' in tyre) return tyre.code;
      const [label, mm] =
        'diameter' in tyre ? ['across', tyre.diameter] : ['round the tread', tyre.circumference];
      return `${writeNumber(mm, 'length', style).text} ${label}`;
    }),
    ...READINGS.flatMap(({ key, quantity }) => {
      const own = u?.[state]?.[key];
      return [
        figure(readings[state]?.[key], quantity),
        ...(isSure.has(key) ? [figure(own === undefined ? null : COVERAGE * own, quantity)] : []),
      ];
    }),
  ]);
  return BYTE_ORDER_MARK + csvText([heads, ...rows], style);
}
