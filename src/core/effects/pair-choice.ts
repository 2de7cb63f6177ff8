/** Choosing among sprocket pairs: filters, order, and the difference of one pair from another. */
import type { SprocketPair } from './sprocket-pairs.ts';

/** What a pair must meet; null where anything will do. */
export interface PairFilter {
  /** Final drive ratio within so many per cent of a wanted one. */
  readonly ratio: { readonly wanted: number; readonly tolerancePercent: number } | null;
  /** A chain of one of these lengths puts the axle into its slot. */
  readonly links: readonly number[] | null;
  /** Some chain puts the axle into its slot, and nothing stands in the sprockets' way. */
  readonly fits: boolean;
  /** Gap of the upper run to the pivot's guide of at least so much, mm. */
  readonly leastGap: number | null;
}

/** Relative rounding of two ratios that are the same. */
const SAME_RATIO = 1e-12;

/** The pairs that meet the filter, in their order. */
export function filteredPairs(pairs: readonly SprocketPair[], filter: PairFilter): SprocketPair[] {
  const { ratio, links, fits, leastGap } = filter;
  return pairs.filter((pair) => {
    if (ratio !== null) {
      const off = Math.abs(pair.ratio / ratio.wanted - 1);
      if (!(off <= ratio.tolerancePercent / 100 + SAME_RATIO)) return false;
    }
    if (links !== null && !pair.fitting.some((fitting) => links.includes(fitting))) return false;
    if (fits && (pair.misfit !== null || pair.links === null || pair.obstacle !== null)) return false;
    return leastGap === null || (pair.pivotGap !== null && pair.pivotGap >= leastGap);
  });
}

export type PairKey =
  | 'frontTeeth'
  | 'rearTeeth'
  | 'ratio'
  | 'links'
  | 'axlePosition'
  | 'wheelbase'
  | 'swingarmAngle'
  | 'antiSquat'
  | 'pivotGap'
  | 'chainMoment';

/** The pairs in the order of one column. Pairs without a number there come last; ties go by teeth, front first. */
export function sortedPairs(
  pairs: readonly SprocketPair[],
  key: PairKey,
  direction: 'rising' | 'falling',
): SprocketPair[] {
  const sign = direction === 'rising' ? 1 : -1;
  return [...pairs].sort((a, b) => {
    const [x, y] = [a[key], b[key]];
    if (typeof x === 'number' && typeof y === 'number' && x !== y) return sign * (x - y);
    if (typeof x !== typeof y) return typeof x === 'number' ? -1 : 1;
    return a.frontTeeth - b.frontTeeth || a.rearTeeth - b.rearTeeth;
  });
}

/** One pair less another, in the units of SprocketPair; null where either has no number. */
export interface PairDifference {
  /** Change of the final ratio, per cent; exactly 0 for the same ratio. */
  readonly ratioPercent: number;
  readonly links: number | null;
  readonly axlePosition: number | null;
  readonly wheelbase: number | null;
  readonly swingarmAngle: number | null;
  readonly antiSquat: number | null;
  readonly pivotGap: number | null;
  /** N·m more about the pivot for every 1000 N of thrust. */
  readonly chainMoment: number | null;
}

export function pairDifference(from: SprocketPair, to: SprocketPair): PairDifference {
  const change = (key: PairKey): number | null => {
    const [before, after] = [from[key], to[key]];
    return typeof before === 'number' && typeof after === 'number' ? after - before : null;
  };
  const sameRatio = from.rearTeeth * to.frontTeeth === to.rearTeeth * from.frontTeeth;
  return {
    ratioPercent: sameRatio ? 0 : 100 * (to.ratio / from.ratio - 1),
    links: change('links'),
    axlePosition: change('axlePosition'),
    wheelbase: change('wheelbase'),
    swingarmAngle: change('swingarmAngle'),
    antiSquat: change('antiSquat'),
    pivotGap: change('pivotGap'),
    chainMoment: change('chainMoment'),
  };
}
