/** Which adjusters differ between two setups. */
import { adjusterOf, type Adjuster } from './all-adjusters.ts';
import type { AdjusterKey, Setup } from './setup.ts';
import type { Tyre } from '../parts/tyre.ts';

/** Whether two tyres are stated alike. */
export function sameTyre(a: Tyre, b: Tyre): boolean {
  if ('code' in a) return 'code' in b && a.code === b.code;
  if ('diameter' in a) return 'diameter' in b && a.diameter === b.diameter;
  return 'circumference' in b && a.circumference === b.circumference;
}

/** Whether another adjuster says where this one stands. */
function isPlaced(adjuster: Adjuster, setup: Setup): boolean {
  return 'placedBy' in adjuster && adjuster.placedBy !== undefined && setup[adjuster.placedBy] !== null;
}

/**
 * Whether an adjuster is set differently in two setups. Where an axle follows its chain, the
 * chain or what moves it counts as changed, and the axle does not.
 */
export function isAdjusterChanged(key: AdjusterKey, setup: Setup, baseline: Setup): boolean {
  const adjuster: Adjuster = adjusterOf(key);
  if (adjuster.holds === 'tyre') return !sameTyre(setup[adjuster.key], baseline[adjuster.key]);
  if (isPlaced(adjuster, setup)) return false;
  return setup[key] !== baseline[key];
}
