/** The columns of the sprocket table: what each shows of a pair, in which quantity, and the words of its differences. */
import type { DriveKind } from '../../core/parts/drive-kind.ts';
import { BELT, CHAIN, nameDrive, type DriveText } from '../../core/parts/drive-noun.ts';
import { changeWord, type ChangeWords } from '../../core/readings/change-words.ts';
import { pairDifference, type PairKey } from '../../core/effects/pair-choice.ts';
import type { SprocketPair } from '../../core/effects/sprocket-pairs.ts';
import { metricOfSteps, shownSteps, writeNumber, type NumberStyle } from '../../core/units/number-style.ts';
import { isLess } from '../../core/units/least-told.ts';
import { QUANTITIES, shownUnit, type QuantityKey } from '../../core/units/all-quantities.ts';

export interface SprocketColumn extends ChangeWords {
  readonly key: Exclude<PairKey, 'frontTeeth' | 'rearTeeth' | 'chainMoment'>;
  readonly label: string;
  readonly quantity: QuantityKey;
}

/** Those that a pair is chosen by first: a phone shows three of them without a scroll aside, a laptop five. */
const COLUMNS: readonly (Omit<SprocketColumn, 'label'> & { readonly label: DriveText })[] = [
  { key: 'ratio', label: 'Ratio', quantity: 'ratio', more: 'shorter', less: 'taller' },
  {
    key: 'antiSquat',
    label: 'Anti-squat',
    quantity: 'percent',
    more: 'more',
    less: 'less',
    belowZero: { more: 'pulls down less', less: 'pulls down more' },
  },
  {
    key: 'pivotGap',
    label: ({ Loop }) => `${Loop} clearance`,
    quantity: 'length',
    more: 'wider',
    less: 'closer',
    belowZero: { more: 'bends less', less: 'bends more' },
    acrossZero: { more: 'now clear', less: 'now rubs' },
  },
  { key: 'links', label: ({ Loop }) => Loop, quantity: 'links', more: 'longer', less: 'shorter' },
  { key: 'axlePosition', label: 'Axle back in slot', quantity: 'length', more: 'back', less: 'forward' },
  { key: 'wheelbase', label: 'Wheelbase', quantity: 'length', more: 'longer', less: 'shorter' },
  {
    key: 'swingarmAngle',
    label: 'Swingarm',
    quantity: 'angle',
    more: 'steeper',
    less: 'flatter',
    belowZero: { more: 'axle rises less', less: 'axle rises more' },
    acrossZero: { more: 'axle now below pivot', less: 'axle now above pivot' },
  },
];

export const SPROCKET_COLUMNS: readonly SprocketColumn[] = COLUMNS.map((column) => ({
  ...column,
  label: nameDrive(column.label, CHAIN),
}));

const OF_BELT: readonly SprocketColumn[] = COLUMNS.map((column) => ({
  ...column,
  label: nameDrive(column.label, BELT),
  quantity: column.key === 'links' ? 'teeth' : column.quantity,
}));

/** The columns in the words of a bike's drive: a belt's length is counted in its teeth. */
export function sprocketColumns(kind: DriveKind): readonly SprocketColumn[] {
  return kind === 'belt' ? OF_BELT : SPROCKET_COLUMNS;
}

/** What stands in one cell: the figure without its unit, and its difference in arrow and signed figure, and in a word. */
export interface SprocketCell {
  readonly figure: string;
  /** Empty where there is nothing to compare; "same" where nothing differs that the figures can show. */
  readonly change: string;
  /** Which way it differs, for the ear: in a table the arrow and the sign say it to the eye. Empty where nobody notices it. */
  readonly word: string;
  readonly differs: boolean;
}

/** The unit of a column, as its head names it. */
export function columnUnit({ quantity }: SprocketColumn, style: NumberStyle): string {
  return shownUnit(quantity, style.system).symbol;
}

function metric({ key, quantity }: SprocketColumn, pair: SprocketPair | null): number | null {
  const value = pair?.[key] ?? null;
  return typeof value === 'number' ? QUANTITIES[quantity].fromCore(value) : null;
}

/** A pair's cell in a column, compared with `reference`; a ratio is compared in per cent. */
export function sprocketCell(
  column: SprocketColumn,
  pair: SprocketPair,
  reference: SprocketPair | null,
  style: NumberStyle,
): SprocketCell {
  const { key, quantity } = column;
  const value = metric(column, pair);
  if (value === null) return { figure: '–', change: '', word: '', differs: false };
  const figure = writeNumber(value, quantity, style).digits;
  const before = metric(column, reference);
  if (before === null || reference === null) return { figure, change: '', word: '', differs: false };
  const byRatio = key === 'ratio';
  // The difference of the numbers as they are written, so that a person who subtracts them finds it.
  const steps = byRatio
    ? shownSteps(pairDifference(reference, pair).ratioPercent, 'percent', style)
    : shownSteps(value, quantity, style) - shownSteps(before, quantity, style);
  if (steps === 0) return { figure, change: 'same', word: '', differs: false };
  const shown = byRatio ? 'percent' : quantity;
  const change = metricOfSteps(steps, shown, style);
  const written = writeNumber(change, shown, style, { signed: true });
  const amount = byRatio ? written.text : written.digits;
  return {
    figure,
    change: `${steps > 0 ? '▲' : '▼'} ${amount}`,
    word: before * value >= 0 && isLess(change, shown) ? '' : changeWord(column, before, value),
    differs: true,
  };
}
