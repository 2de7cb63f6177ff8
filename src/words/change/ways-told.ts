/** The words beside a change of a figure; a change too small to be named has none. */
import { waysBySize, type ChangeWords, type Ways } from '../../core/readings/change-words.ts';
import { QUANTITIES, type QuantityKey } from '../../core/units/all-quantities.ts';
import { isLess } from '../../core/units/least-told.ts';

const NOTHING: Ways = { more: '', less: '' };

/**
 * The two words for a change between metric figures, by its size. Both are empty where Why would call the change too small
 * for a gauge or a rider to notice, unless zero lies between: a chain that has come to rub is named however little it moved.
 */
export function waysTold(
  words: ChangeWords & { readonly quantity: QuantityKey },
  before: number,
  after: number,
): Ways {
  const small = before * after >= 0 && isLess(after - before, words.quantity);
  return small ? NOTHING : waysBySize(words, before, after);
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

/** The change that a rider notices, metric: that of the reading, else of its quantity. */
export const noticedOf = ({ felt, quantity }: ChangeWords & { readonly quantity: QuantityKey }): number =>
  felt?.from ?? QUANTITIES[quantity].noticed;
