/** A setup on the way from one to another, with whole teeth and links. */
import { adjusterOf } from '../../core/adjusters/all-adjusters.ts';
import type { AdjusterKey, Setup } from '../../core/adjusters/setup.ts';
import { QUANTITIES } from '../../core/units/all-quantities.ts';
import { mixPlain } from './mix-plain.ts';

/** Teeth and links come whole: those of the nearer end. */
export function setupBetween(from: Setup, to: Setup, part: number): Setup {
  const near = part < 0.5 ? from : to;
  const mixed = mixPlain(from, to, part);
  const counted = (Object.keys(near) as AdjusterKey[]).filter((key) => isCounted(key));
  return { ...mixed, ...Object.fromEntries(counted.map((key) => [key, near[key]])) };
}

function isCounted(key: AdjusterKey): boolean {
  const adjuster = adjusterOf(key);
  return 'quantity' in adjuster && QUANTITIES[adjuster.quantity].counted !== null;
}
