/** An adjuster's value as the workshop also counts it, such as "1.5 turns" or "1 link of chain". */
import type { Aside } from '../../core/adjusters/definition/adjuster.ts';
import type { NumberStyle } from '../../core/units/number-style.ts';

const COUNTED: Readonly<Record<Aside['counted'], { readonly one: string; readonly many: string }>> = {
  turns: { one: 'turn', many: 'turns' },
  links: { one: 'link of chain', many: 'links of chain' },
  teeth: { one: 'tooth', many: 'teeth' },
};
const ASIDE_DIGITS = 2;

/** The amount without its sign: the direction stands beside it in words. Empty when it rounds to nothing. */
export function asideText(aside: Aside, style: NumberStyle): string {
  const amount = Number(Math.abs(aside.amount).toFixed(ASIDE_DIGITS));
  if (amount === 0) return '';
  const digits = String(amount).replace('.', style.decimal);
  return `${digits}\u00a0${COUNTED[aside.counted][amount === 1 ? 'one' : 'many']}`;
}

/** From the baseline's way of counting to the value's. */
export function asideBetween(value: Aside | null, baseline: Aside | null): Aside | null {
  if (value === null || baseline === null) return null;
  return { amount: value.amount - baseline.amount, counted: value.counted };
}
