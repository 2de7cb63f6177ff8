/** A list of numbers as a person types it, such as chains in stock or the ratios of a gearbox. */
import { fail, succeed, type Result } from '../core/numeric/result.ts';
import type { NumberStyle } from '../core/units/number-style.ts';
import { shownUnit, type QuantityKey } from '../core/units/all-quantities.ts';
import { parseQuantity } from '../core/units/parse-quantity.ts';

export interface ListRules {
  readonly least: number;
  readonly most: number;
  readonly whole: boolean;
  /** Numbers at most. */
  readonly longest: number;
  /** What the numbers count; left out for plain numbers. Bounds are metric. */
  readonly quantity?: QuantityKey;
}

/**
 * The numbers of a text, in its order; empty for no text. Spaces, semicolons and commas part them; where parts of a
 * whole are allowed, a comma right between two digits is a decimal comma. Or one sentence on what cannot be taken.
 */
export function readList(text: string, rules: ListRules, style: NumberStyle): Result<number[], string> {
  const { least, longest, most, whole, quantity = 'ratio' } = rules;
  const words = withUnits(text, rules)
    .split(whole ? /[\s;,]+/ : /[\s;]+|,(?=\s|$)/)
    .filter((word) => word !== '');
  if (words.length > longest) return fail(`At most ${longest} numbers go here.`);
  const numbers: number[] = [];
  for (const word of words) {
    const read = parseQuantity(word, quantity, style.system);
    if (!read.ok) return fail(`“${word}” is not a number.`);
    if (!whole && most > THOUSANDS_ABOVE && isThousands(word, read.value))
      return fail(
        `“${word}” could be a number of thousands or one with decimals. Type it without a sign between the thousands, or with fewer decimals.`,
      );
    if (whole && !Number.isInteger(read.value)) return fail(`“${word}” is not whole.`);
    if (read.value < least || read.value > most)
      return fail(
        `“${word}” is not from ${writeOne(least, quantity, style)} to ${writeOne(most, quantity, style)}.`,
      );
    numbers.push(read.value);
  }
  return succeed(numbers);
}

/** Numbers up to this are not written with a sign between thousands. */
const THOUSANDS_ABOVE = 100;

/** Whether `1,420` may mean 1420: three digits behind one separator, read as a number below a hundred. */
function isThousands(word: string, value: number): boolean {
  return /^[1-9]\d{0,2}[.,]\d{3}(?!\d)/.test(word) && value < THOUSANDS_ABOVE;
}

/** The text with each unit drawn to its number, so that the space before it parts nothing. */
function withUnits(text: string, { quantity }: ListRules): string {
  return quantity === undefined ? text : text.replace(/(\d)\s+(?=[a-z])/giu, '$1');
}

/** Digits kept of a number in another unit, far below what anyone types. */
const KEPT_DIGITS = 6;

/** A metric number as a person would type it, in the user's unit. */
function writeOne(metric: number, quantity: QuantityKey, style: NumberStyle): string {
  const { perMetric } = shownUnit(quantity, style.system);
  return String(Number((metric * perMetric).toFixed(KEPT_DIGITS))).replace('.', style.decimal);
}

/** The list as a person would type it. */
export function writeList(
  numbers: readonly number[],
  style: NumberStyle,
  quantity: QuantityKey = 'ratio',
): string {
  return numbers.map((value) => writeOne(value, quantity, style)).join(style.decimal === ',' ? '; ' : ', ');
}
