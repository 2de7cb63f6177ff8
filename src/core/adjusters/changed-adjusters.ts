/** Which adjusters stand elsewhere than a setup that is compared with has them. */
import type { AdjusterKey, Setup } from './setup.ts';
import type { Tyre } from '../parts/tyre.ts';

function sameTyre(a: Tyre, b: Tyre): boolean {
  if ('code' in a) return 'code' in b && a.code === b.code;
  if ('diameter' in a) return 'diameter' in b && a.diameter === b.diameter;
  return 'circumference' in b && a.circumference === b.circumference;
}

/**
 * Whether an adjuster differs between two setups, by what it is set to. An axle that follows its chain stands where nobody
 * set it: then the chain counts as changed, or what moves it, and not the axle.
 */
export function isAdjusterChanged(key: AdjusterKey, setup: Setup, baseline: Setup): boolean {
  if (key === 'frontTyre' || key === 'rearTyre') return !sameTyre(setup[key], baseline[key]);
  if (key === 'axlePosition' && setup.chainLinks !== null) return false;
  return setup[key] !== baseline[key];
}
