/** How much longer or shorter than delivered a shock can be on its links: the range of its adjuster. */
import type { Swingarm } from '../parts/bike.ts';
import { AS_DELIVERED } from './link-adjustments.ts';
import { rearLayout } from './rear-layout-of.ts';
import { suspension } from './suspension.ts';

/** mm of change, shorter below zero. */
export interface ShockLengthRange {
  readonly least: number;
  readonly most: number;
}

interface Tried {
  readonly widest: number;
  readonly step: number;
  readonly range: ShockLengthRange;
}

/** Links are tried once for each swingarm, because the page needs the range at every step. */
const known = new WeakMap<Swingarm, Tried>();

/**
 * The changes of length, in whole `step`s within ± `widest` mm, at which the rear suspension still exists, no other
 * adjuster turned. The whole width if it does not exist even as delivered.
 */
export function shockLengthRange(swingarm: Swingarm, widest: number, step: number): ShockLengthRange {
  const before = known.get(swingarm);
  if (before?.widest === widest && before.step === step) return before.range;
  const layout = rearLayout(swingarm);
  const works = (shockLength: number): boolean =>
    suspension(layout, swingarm.length, { ...AS_DELIVERED, shockLength }).ok;
  const reach = (way: 1 | -1): number => {
    let steps = 0;
    while ((steps + 1) * step <= widest && works(way * (steps + 1) * step)) steps++;
    return way * steps * step;
  };
  const range = works(0) ? { least: reach(-1), most: reach(1) } : { least: -widest, most: widest };
  known.set(swingarm, { widest, step, range });
  return range;
}
