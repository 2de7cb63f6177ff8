/** Every combination of the adjusters' values, counted through. */
import { LINK_ADJUSTERS } from '../adjusters/machine-part-adjusters.ts';
import { SPRING_KEYS } from './kept-parts.ts';
import type { Prepared, PreparedAdjuster } from './prepared.ts';
import type { AdjusterKey, Setup } from '../adjusters/setup.ts';

/** Adjusters after which the rear links are solved anew, which takes longer than all the rest: they turn slowest. */
const SLOWEST: readonly AdjusterKey[] = LINK_ADJUSTERS;

export interface Combinations {
  /** The place of each adjuster's value in its list, for a combination by its number. */
  readonly placesAt: (combination: number) => readonly number[];
  readonly setupAt: (combination: number) => Setup;
}

/** Numbers from 0 to `total` − 1; places are in the order of `prepared.adjusters`. */
export function combinations({ adjusters, setup }: Prepared): Combinations {
  const order = adjusters
    .map((adjuster, place) => ({ adjuster, place, nearestFirst: nearestFirst(adjuster) }))
    .sort((a, b) => slowness(b.adjuster) - slowness(a.adjuster))
    .reverse();
  const placesAt = (combination: number): number[] => {
    const places = new Array<number>(adjusters.length).fill(0);
    let rest = combination;
    for (const { place, nearestFirst: near } of order) {
      const count = near.length;
      places[place] = near[rest % count];
      rest = Math.floor(rest / count);
    }
    return places;
  };
  const setupAt = (combination: number): Setup => {
    // A copy that is written into keeps its form, and what reads a million of them is quicker for it.
    const turned: { -readonly [Key in keyof Setup]: unknown } = { ...setup };
    let rest = combination;
    for (const { adjuster, nearestFirst: near } of order) {
      const count = near.length;
      turned[adjuster.key] = adjuster.values[near[rest % count]];
      rest = Math.floor(rest / count);
    }
    // The values of a tyre's adjuster are tyres, all others numbers.
    return turned as Setup;
  };
  return { placesAt, setupAt };
}

/** The places of an adjuster's values, from where it stands outward: a search that is ended early has tried what is near. */
function nearestFirst({ steps }: PreparedAdjuster): readonly number[] {
  return steps.map((_, place) => place).sort((a, b) => Math.abs(steps[a]) - Math.abs(steps[b]));
}

/** Springs turn quickest: while they do, the machine around them stays. */
const slowness = ({ key }: PreparedAdjuster): number =>
  SPRING_KEYS.includes(key) ? -2 : SLOWEST.indexOf(key);
