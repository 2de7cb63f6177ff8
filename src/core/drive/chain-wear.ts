/** Chain wear: how much longer the links have become, and when the chain is done. */
import { refused, solved, type Result } from '../numeric/result.ts';

/** Wear at which a chain is done, per cent, on sprockets up to 66 teeth or so. */
const USUAL_LIMIT = 3;
/** Largest sprockets beyond these teeth throw a worn chain off sooner: then the limit is this many per cent over the teeth. */
const LARGE_SPROCKET = 67;
const LARGE_SPROCKET_LIMIT = 200;

/**
 * Wear at which a chain is usually done, per cent of its length when new: 3, or 200/N with more than 67 teeth on the
 * larger sprocket. What stands in for a limit until the maker's own is known, which goes before it. Source: advice that
 * chain makers publish.
 */
export function usualWearLimit(largestTeeth: number): number {
  return largestTeeth > LARGE_SPROCKET ? LARGE_SPROCKET_LIMIT / largestTeeth : USUAL_LIMIT;
}

export interface ChainWear {
  /** Longer than new, per cent; slightly below zero is a chain measured without enough pull. */
  readonly percent: number;
  readonly limit: number;
  /** Length over the measured links at which the chain is done, mm. */
  readonly lengthAtLimit: number;
  readonly done: boolean;
}

export type WearReason = 'linksImpossible' | 'lengthImpossible' | 'limitImpossible';

/** A measured length further than this from new, in parts of it, is a miscount of links. */
const MISCOUNT = 0.12;

/**
 * Wear from the length over `links` links, mm, pin to pin with the chain pulled tight: 100·(length / (links·pitch) −
 * 1). `limit` is the maker's, per cent. Refused for less than one link, a length so far from new that the links must have
 * been miscounted, and a limit that is none.
 */
export function chainWear(
  measured: { readonly links: number; readonly length: number },
  pitch: number,
  limit: number,
): Result<ChainWear, WearReason> {
  const { links, length } = measured;
  if (!(Number.isInteger(links) && links > 0)) return refused('linksImpossible');
  const fresh = links * pitch;
  const longer = length / fresh - 1;
  if (!(Math.abs(longer) < MISCOUNT)) return refused('lengthImpossible');
  if (!(limit > 0 && limit < 100 * MISCOUNT)) return refused('limitImpossible');
  const percent = 100 * longer;
  return solved({ percent, limit, lengthAtLimit: fresh * (1 + limit / 100), done: percent >= limit });
}
