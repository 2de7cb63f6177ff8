/** Reading what a person types into a number field: decimals, fractions, and a unit of either system. */
import { refused, solved, type Result } from '../numeric/result.ts';
import {
  KG_PER_POUND,
  KM_PER_MILE,
  MM_PER_INCH,
  NEWTON_PER_POUND_FORCE,
  STANDARD_GRAVITY,
} from './convert.ts';
import { shownUnit, type QuantityKey, type UnitSystem } from './quantity.ts';

export type ParseReason = 'empty' | 'notANumber' | 'wrongUnit' | 'tooLarge';

/** Unit words understood for each quantity, with the metric number of one of them. */
const UNIT_WORDS: Readonly<Record<QuantityKey, Readonly<Record<string, number>>>> = {
  length: { mm: 1, cm: 10, m: 1000, in: MM_PER_INCH, inch: MM_PER_INCH, '"': MM_PER_INCH, '″': MM_PER_INCH },
  angle: { '°': 1, deg: 1, degrees: 1 },
  mass: { kg: 1, g: 0.001, lb: KG_PER_POUND, lbs: KG_PER_POUND },
  acceleration: { g: 1 },
  ratio: {},
  percent: { '%': 1 },
  teeth: { teeth: 1, t: 1 },
  links: { links: 1, link: 1 },
  count: {},
  force: { n: 1, kn: 1000, lbf: NEWTON_PER_POUND_FORCE, lb: NEWTON_PER_POUND_FORCE },
  rate: {
    'n/mm': 1,
    'n/cm': 0.1,
    'kg/mm': STANDARD_GRAVITY,
    'kgf/mm': STANDARD_GRAVITY,
    'lb/in': NEWTON_PER_POUND_FORCE / MM_PER_INCH,
    'lbf/in': NEWTON_PER_POUND_FORCE / MM_PER_INCH,
  },
  speed: { 'km/h': 1, mph: KM_PER_MILE },
};

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
  if (plain === '') return refused('empty');
  const match =
    /^([+-]?)\s*(?:(\d+)\s+(\d+)\/(\d+)|(\d+)\/(\d+)|(\d+(?:[.,]\d*)?|[.,]\d+))\s*([a-z"″°%/]*)$/.exec(plain);
  if (!match) return refused('notANumber');
  const [, sign, whole, over, under, overOnly, underOnly, decimal, word] = match;
  const size =
    whole !== undefined
      ? Number(whole) + Number(over) / Number(under)
      : overOnly !== undefined
        ? Number(overOnly) / Number(underOnly)
        : Number(decimal.replace(',', '.'));
  if (!Number.isFinite(size)) return refused('notANumber');
  let perUnit = 1 / shownUnit(quantity, system).perMetric;
  if (system === 'inch' && quantity === 'length') perUnit = MM_PER_INCH;
  if (system === 'inch' && quantity === 'mass') perUnit = KG_PER_POUND;
  if (system === 'inch' && quantity === 'force') perUnit = NEWTON_PER_POUND_FORCE;
  if (word !== '') {
    const known = UNIT_WORDS[quantity];
    if (!Object.hasOwn(known, word)) return refused('wrongUnit');
    perUnit = known[word];
  }
  // 1.5 · 25.4 is 38.1, not 38.099999999999994: what was typed has no digits that far down.
  const metric = Number(((sign === '-' ? -1 : 1) * size * perUnit).toFixed(KEPT_DECIMALS));
  if (Math.abs(metric) > LARGEST) return refused('tooLarge');
  return solved(metric);
}
