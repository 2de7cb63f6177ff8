/** A list of numbers as a person types it, such as chains in hand or the ratios of a gearbox. */
import { refused, solved, type Result } from '../core/numeric/result.ts';
import type { NumberStyle } from '../core/units/number-style.ts';
import { parseQuantity } from '../core/units/parse-quantity.ts';

export interface ListRules {
  readonly least: number;
  readonly most: number;
  readonly whole: boolean;
  /** Numbers at most. */
  readonly longest: number;
}

/**
 * The numbers of a text, in its order; empty for no text. Spaces, semicolons and commas part them; where parts of a
 * whole are allowed, a comma right between two digits is a decimal comma. Or one sentence on what cannot be taken.
 */
export function readList(text: string, rules: ListRules, style: NumberStyle): Result<number[], string> {
  const { least, longest, most, whole } = rules;
  const words = text.split(whole ? /[\s;,]+/ : /[\s;]+|,(?=\s|$)/).filter((word) => word !== '');
  if (words.length > longest) return refused(`At most ${longest} numbers go here.`);
  const numbers: number[] = [];
  for (const word of words) {
    const read = parseQuantity(word, 'ratio', style.system);
    if (!read.ok) return refused(`“${word}” is not a number.`);
    if (whole && !Number.isInteger(read.value)) return refused(`“${word}” is not whole.`);
    if (read.value < least || read.value > most)
      return refused(`“${word}” is not from ${writePlain(least, style)} to ${writePlain(most, style)}.`);
    numbers.push(read.value);
  }
  return solved(numbers);
}

function writePlain(value: number, style: NumberStyle): string {
  return String(value).replace('.', style.decimal);
}

/** The list as a person would type it. */
export function writeList(numbers: readonly number[], style: NumberStyle): string {
  return numbers.map((value) => writePlain(value, style)).join(style.decimal === ',' ? '; ' : ', ');
}
