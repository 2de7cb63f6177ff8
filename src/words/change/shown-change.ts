/** A change as it is shown: its figure, and the direction that follows from the figure. */
import {
  roundsToNothing,
  writeChange,
  writeNumber,
  type NumberStyle,
} from '../../core/units/number-style.ts';
import type { QuantityKey } from '../../core/units/all-quantities.ts';

export interface ShownChange {
  /** 0 where the figure reads zero, whatever is behind it. */
  readonly sign: -1 | 0 | 1;
  /** The figure without its sign, such as "4.9 mm". */
  readonly amount: string;
  /** The figure with its sign, such as "−4.9 mm". */
  readonly signed: string;
}

/** A metric change in the user's unit. */
export function shownChange(metric: number, quantity: QuantityKey, style: NumberStyle): ShownChange {
  const sign = roundsToNothing(metric, quantity, style) ? 0 : metric > 0 ? 1 : -1;
  return {
    sign,
    amount: writeNumber(Math.abs(metric), quantity, style).text,
    signed: writeChange(metric, quantity, style).text,
  };
}

/** One of three words for a change: for more, for less, and for none that its figure shows. */
export function directionWord(
  { sign }: Pick<ShownChange, 'sign'>,
  words: { readonly more: string; readonly less: string; readonly same: string },
): string {
  return sign === 0 ? words.same : sign > 0 ? words.more : words.less;
}
