/** A number with its ±, as it is written everywhere. */
import { shownUnit, type QuantityKey } from '../core/units/all-quantities.ts';
import { writeNumber, type NumberStyle } from '../core/units/number-style.ts';

/** Every ± on the page holds 19 times out of 20: twice the standard deviation (JCGM 100, k = 2). */
export const COVERAGE = 2;
/** From these on a ± takes so few decimals, in the unit shown: two figures of it, or one, are all that anybody uses. */
const NO_DECIMALS_FROM = 3;
const ONE_DECIMAL_FROM = 0.3;

/** Decimals beside those that the quantity usually has, as the ± supports them; 0 where it is below the last digit. */
function extraDigits(u: number, quantity: QuantityKey, style: NumberStyle): number {
  const { perMetric, digits } = shownUnit(quantity, style.system);
  const shown = COVERAGE * u * perMetric;
  const wanted = shown >= NO_DECIMALS_FROM ? 0 : shown >= ONE_DECIMAL_FROM ? 1 : 2;
  return isExact(u, quantity, style) ? 0 : Math.min(wanted, digits) - digits;
}

function isExact(u: number, quantity: QuantityKey, style: NumberStyle): boolean {
  const { perMetric, digits } = shownUnit(quantity, style.system);
  return COVERAGE * u * perMetric < 0.5 * 10 ** -digits;
}

/** A number with its ±, both with as many digits as the ± supports, such as "24.5 ± 0.4°". */
export function writePlusMinus(value: number, u: number, quantity: QuantityKey, style: NumberStyle): string {
  const sure = writeSure(value, u, quantity, style);
  if (isExact(u, quantity, style)) return sure.text;
  const options = { extraDigits: extraDigits(u, quantity, style) };
  return `${sure.digits} ± ${writeNumber(COVERAGE * u, quantity, style, options).text}`;
}

/** A number alone, with as many digits as its ± supports, such as "24.5°". */
export function writeSure(
  value: number,
  u: number,
  quantity: QuantityKey,
  style: NumberStyle,
): ReturnType<typeof writeNumber> {
  return writeNumber(value, quantity, style, { extraDigits: extraDigits(u, quantity, style) });
}

/** A ± alone, such as "± 4 mm". */
export function plusMinus(u: number, quantity: QuantityKey, style: NumberStyle): string {
  const [, error] = writePlusMinus(0, u, quantity, style).split('±');
  return error === undefined ? 'exact' : `±${error}`;
}
