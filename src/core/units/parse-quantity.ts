/** Reading what a person types into a number field: decimals, fractions, and a unit of either system. */
import { fail, succeed, type Result } from '../numeric/result.ts';
import { QUANTITIES, shownUnit, type QuantityKey } from './all-quantities.ts';
import type { UnitSystem } from './quantity.ts';

export type ParseReason = 'empty' | 'notANumber' | 'wrongUnit' | 'tooLarge';

/** Decimals of the metric number kept: far below anything typed, just above the rounding of a multiplication. */
const KEPT_DECIMALS = 10;

/** Largest number taken from a field: far above any part of a motorcycle, far below trouble in arithmetic. */
const LARGEST = 1e6;

/**
 * The metric number (mm, degrees, kg, g, %) meant by `text`. A bare number is in the user's own unit; a unit
 * word overrides it. Understands `25,4`, `25.4 mm`, `1 in`, `1 1/2"`, `12.7°`, a leading sign (also a true minus).
 */
export function parseQuantity(
  text: string,
  quantity: QuantityKey,
  system: UnitSystem,
): Result<number, ParseReason> {
  const plain = text
    .trim()
    .replace(/[\u2212\u2013]/g, '-')
    .replace(/[\u00a0\u202f]/g, ' ')
    .toLowerCase();
  if (plain === '') return fail('empty');
  const match =
    /^([+-]?)\s*(?:(\d+)\s+(\d+)\/(\d+)|(\d+)\/(\d+)|(\d+(?:[.,]\d*)?|[.,]\d+))\s*([a-z"″°%/]*³?)$/.exec(
      plain,
    );
  if (!match) return fail('notANumber');
  const [, sign, whole, over, under, overOnly, underOnly, decimal, word] = match;
  const size =
    whole !== undefined
      ? Number(whole) + Number(over) / Number(under)
      : overOnly !== undefined
        ? Number(overOnly) / Number(underOnly)
        : Number(decimal.replace(',', '.'));
  if (!Number.isFinite(size)) return fail('notANumber');
  let perUnit = shownUnit(quantity, system).inMetric;
  if (word !== '') {
    const { typed } = QUANTITIES[quantity];
    if (!Object.hasOwn(typed, word)) return fail('wrongUnit');
    perUnit = typed[word];
  }
  // 1.5 · 25.4 is 38.1, not 38.099999999999994: what was typed has no digits that far down.
  const metric = Number(((sign === '-' ? -1 : 1) * size * perUnit).toFixed(KEPT_DECIMALS));
  if (Math.abs(metric) > LARGEST) return fail('tooLarge');
  return succeed(metric);
}
