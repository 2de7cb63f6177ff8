/** The words beside a change of a figure, which a change too small to be told does without. */
import { waysBetween, type ChangeWords, type Ways } from '../core/readings/change-words.ts';
import type { QuantityKey } from '../core/units/all-quantities.ts';
import { isLess, LEAST_TOLD, type ToldQuantity } from './least-told.ts';

const NOTHING: Ways = { more: '', less: '' };

/**
 * The two words for a change between metric figures. Both are empty where Why would call the change too small for a
 * gauge or a rider to notice, unless zero lies between: a chain that has come to rub is told however little it moved.
 */
export function waysTold(
  words: ChangeWords & { readonly quantity: QuantityKey },
  before: number,
  after: number,
): Ways {
  const { quantity } = words;
  const small = hasLeast(quantity) && before * after >= 0 && isLess(after - before, quantity);
  return small ? NOTHING : waysBetween(words, before, after);
}

/** The one of them that holds, behind a figure that is written: ", quicker steering", or nothing. */
export function wordTold(
  words: ChangeWords & { readonly quantity: QuantityKey },
  before: number,
  after: number,
): string {
  const { more, less } = waysTold(words, before, after);
  const word = after > before ? more : less;
  return word === '' ? '' : `, ${word}`;
}

const hasLeast = (quantity: QuantityKey): quantity is ToldQuantity => quantity in LEAST_TOLD;
