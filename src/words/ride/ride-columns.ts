/** The columns of the table of ride states: which figure, in which unit, and the words for a change of it. */
import type { RideFigures } from '../../core/effects/ride-table.ts';
import type { ChangeWords } from '../../core/readings/change-words.ts';
import { REST_WORDS } from './rest-words.ts';
import { writeNumber, type NumberStyle } from '../../core/units/number-style.ts';
import { shownUnit, type QuantityKey } from '../../core/units/all-quantities.ts';

export interface RideColumn extends ChangeWords {
  readonly key: string;
  readonly label: string;
  readonly quantity: QuantityKey;
  readonly value: (figures: RideFigures) => number | null;
  /** The words below the figure; empty for none. */
  readonly besides: (figures: RideFigures, style: NumberStyle) => string;
}

const left = (value: number, style: NumberStyle): string =>
  `${writeNumber(value, 'length', style).digits} left`;
const share = (value: number | null, style: NumberStyle): string =>
  value === null ? '' : writeNumber(value, 'percent', style).text;
const nothing = (): string => '';

export const RIDE_COLUMNS: readonly RideColumn[] = [
  {
    key: 'frontUsed',
    label: 'Fork used',
    quantity: 'length',
    value: ({ frontUsed }) => frontUsed,
    besides: ({ frontLeft }, style) => left(frontLeft, style),
    more: 'deeper',
    less: 'higher',
  },
  {
    key: 'rearUsed',
    label: 'Rear used',
    quantity: 'length',
    value: ({ rearUsed }) => rearUsed,
    besides: ({ rearLeft }, style) => left(rearLeft, style),
    more: 'deeper',
    less: 'higher',
  },
  {
    key: 'frontLoad',
    label: 'Front wheel load',
    quantity: 'force',
    value: ({ frontLoad }) => frontLoad,
    besides: ({ frontShare }, style) => share(frontShare, style),
    more: 'more load',
    less: 'less load',
  },
  {
    key: 'rearLoad',
    label: 'Rear wheel load',
    quantity: 'force',
    value: ({ rearLoad }) => rearLoad,
    besides: ({ frontShare }, style) => share(frontShare === null ? null : 100 - frontShare, style),
    more: 'more load',
    less: 'less load',
  },
  {
    key: 'rake',
    label: 'Rake',
    quantity: 'angle',
    value: ({ rake }) => rake,
    besides: nothing,
    more: 'slacker',
    less: 'steeper',
  },
  {
    key: 'trail',
    label: 'Trail',
    quantity: 'length',
    value: ({ trail }) => trail,
    besides: nothing,
    more: 'longer',
    less: 'shorter',
    belowZero: { more: 'less negative', less: 'more negative' },
  },
  {
    key: 'antiSquat',
    label: 'Anti-squat',
    quantity: 'percent',
    value: ({ antiSquat }) => antiSquat,
    besides: nothing,
    more: 'more',
    less: 'less',
    belowZero: { more: 'pulls down less', less: 'pulls down more' },
  },
];

/** The unit above a column. */
export function columnUnit({ quantity }: RideColumn, style: NumberStyle): string {
  return shownUnit(quantity, style.system).symbol;
}

/** How the two ends rest, short enough for a table; empty in the states that are no balance. */
export function restsShort({ frontRest, rearRest }: RideFigures): string {
  if (frontRest === null || rearRest === null) return '';
  if (frontRest !== rearRest) return `front ${REST_WORDS[frontRest]}, rear ${REST_WORDS[rearRest]}`;
  return frontRest === 'onSprings' ? 'both on their springs' : `both ${REST_WORDS[frontRest]}`;
}
