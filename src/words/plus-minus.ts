/** A number with its ±, as it is written everywhere. */
import { shownUnit, type QuantityKey } from '../core/units/all-quantities.ts';
import { writeNumber, type NumberStyle } from '../core/units/number-style.ts';

/** Every ± on the page holds 19 times out of 20: twice the standard deviation (JCGM 100, k = 2). */
export const COVERAGE = 2;
/** From these on a ± takes so few decimals, in the unit shown: two figures of it, or one, are all that anybody uses. */
const NO_DECIMALS_FROM = 3;
const ONE_DECIMAL_FROM = 0.3;

/** A number with its ±, both with as many digits as the ± supports, such as "24.5 ± 0.4°". */
export function writePlusMinus(value: number, u: number, quantity: QuantityKey, style: NumberStyle): string {
  const { perMetric, digits } = shownUnit(quantity, style.system);
  const error = COVERAGE * u;
  const shown = error * perMetric;
  const wanted = shown >= NO_DECIMALS_FROM ? 0 : shown >= ONE_DECIMAL_FROM ? 1 : 2;
  const options = { extraDigits: Math.min(wanted, digits) - digits };
  if (shown < 0.5 * 10 ** -digits) return writeNumber(value, quantity, style).text;
  return `${writeNumber(value, quantity, style, options).digits} ± ${writeNumber(error, quantity, style, options).text}`;
}

/** A ± alone, such as "± 4 mm". */
export function plusMinus(u: number, quantity: QuantityKey, style: NumberStyle): string {
  const [, error] = writePlusMinus(0, u, quantity, style).split('±');
  return error === undefined ? 'exact' : `±${error}`;
}
