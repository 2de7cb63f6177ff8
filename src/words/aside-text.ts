/** An adjuster's value told the workshop's second way, as "1.5 turns" or "1 link". */
import type { Aside } from '../core/adjusters/definition/adjuster.ts';
import type { NumberStyle } from '../core/units/number-style.ts';

const SINGLE: Readonly<Record<Aside['counted'], string>> = {
  turns: 'turn',
  links: 'link',
  teeth: 'tooth',
};
const ASIDE_DIGITS = 2;

/** The amount without its sign: the direction stands beside it in words. Empty when it rounds to nothing. */
export function asideText(aside: Aside, style: NumberStyle): string {
  const amount = Number(Math.abs(aside.amount).toFixed(ASIDE_DIGITS));
  if (amount === 0) return '';
  const digits = String(amount).replace('.', style.decimal);
  return `${digits}\u00a0${amount === 1 ? SINGLE[aside.counted] : aside.counted}`;
}

/** From the baseline's way of counting to the value's. */
export function asideBetween(value: Aside | null, baseline: Aside | null): Aside | null {
  if (value === null || baseline === null) return null;
  return { amount: value.amount - baseline.amount, counted: value.counted };
}
