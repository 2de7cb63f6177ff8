/** How a change from the baseline is written: arrow, sign and number, and which of two words goes with it. */
import { shownDifference, writeChange, type NumberStyle } from '../../core/units/number-style.ts';
import type { QuantityKey } from '../../core/units/all-quantities.ts';

export interface Difference {
  /** "same" when the change is below what the quantity's digits can show. */
  readonly direction: 'more' | 'less' | 'same';
  readonly arrow: '▲' | '▼' | '';
  /** Signed, with its unit and without; empty when nothing changed. */
  readonly amount: string;
  readonly digits: string;
}

/** The change from `baseline` to `value`, both metric numbers. */
export function differenceOf(
  value: number,
  baseline: number,
  quantity: QuantityKey,
  style: NumberStyle,
): Difference {
  const change = shownDifference(baseline, value, quantity, style);
  if (change === 0) return { direction: 'same', arrow: '', amount: '', digits: '' };
  const { text, digits } = writeChange(change, quantity, style);
  return {
    direction: change > 0 ? 'more' : 'less',
    arrow: change > 0 ? '▲' : '▼',
    amount: text,
    digits,
  };
}
