/** How a change from the baseline is written: arrow, sign and number, and which of two words goes with it. */
import { roundsToNothing, writeNumber, type NumberStyle } from '../core/units/number-style.ts';
import type { QuantityKey } from '../core/units/quantity.ts';

export interface Difference {
  /** "same" when the change is below what the quantity's digits can show. */
  readonly direction: 'more' | 'less' | 'same';
  readonly arrow: '▲' | '▼' | '';
  /** Signed, with its unit; empty when nothing changed. */
  readonly amount: string;
}

/** The change from `baseline` to `value`, both metric numbers. */
export function differenceOf(
  value: number,
  baseline: number,
  quantity: QuantityKey,
  style: NumberStyle,
): Difference {
  const change = value - baseline;
  if (roundsToNothing(change, quantity, style)) return { direction: 'same', arrow: '', amount: '' };
  const { text } = writeNumber(change, quantity, style, { signed: true });
  return {
    direction: change > 0 ? 'more' : 'less',
    arrow: change > 0 ? '▲' : '▼',
    amount: quantity === 'teeth' && Math.abs(change) === 1 ? text.replace('teeth', 'tooth') : text,
  };
}
