/** Which adjusters stand elsewhere than a setup that is compared with has them. */
import { adjusterOf, type Adjuster } from './all-adjusters.ts';
import type { AdjusterKey, Setup } from './setup.ts';
import type { Tyre } from '../parts/tyre.ts';

function sameTyre(a: Tyre, b: Tyre): boolean {
  if ('code' in a) return 'code' in b && a.code === b.code;
  if ('diameter' in a) return 'diameter' in b && a.diameter === b.diameter;
  return 'circumference' in b && a.circumference === b.circumference;
}

/** Whether another adjuster says where this one stands. */
function isPlaced(adjuster: Adjuster, setup: Setup): boolean {
  return 'placedBy' in adjuster && adjuster.placedBy !== undefined && setup[adjuster.placedBy] !== null;
}

/**
 * Whether an adjuster differs between two setups, by what it is set to. An axle that follows its chain stands where nobody
 * set it: then the chain counts as changed, or what moves it, and not the axle.
 */
export function isAdjusterChanged(key: AdjusterKey, setup: Setup, baseline: Setup): boolean {
  const adjuster: Adjuster = adjusterOf(key);
  if (adjuster.holds === 'tyre') return !sameTyre(setup[adjuster.key], baseline[adjuster.key]);
  if (isPlaced(adjuster, setup)) return false;
  return setup[key] !== baseline[key];
}
