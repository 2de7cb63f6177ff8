/** Chain wear: how much longer the links have become, and when the chain is worn out. */
import { fail, succeed, type Result } from '../numeric/result.ts';

/** Wear at which a chain is worn out, per cent, on sprockets up to 66 teeth or so. */
const USUAL_LIMIT = 3;
/** Largest sprockets beyond these teeth throw a worn chain off sooner: then the limit is this many per cent over the teeth. */
const LARGE_SPROCKET = 67;
const LARGE_SPROCKET_LIMIT = 200;

/**
 * Wear at which a chain is usually worn out, per cent of its length when new: 3, or 200/N with more than 67 teeth on
 * the larger sprocket. It stands in until the maker's own limit is known. Common practice of industrial drives, no
 * source; manuals of motorcycles give about 0.6 to 1.7 (from memory).
 * Example: largestTeeth 80 → 2.5 %.
 */
export function usualWearLimit(largestTeeth: number): number {
  return largestTeeth > LARGE_SPROCKET ? LARGE_SPROCKET_LIMIT / largestTeeth : USUAL_LIMIT;
}

export interface ChainWear {
  /** Longer than new, per cent; slightly below zero is a chain measured without enough pull. */
  readonly percent: number;
  readonly limit: number;
  /** Length over the measured links at which the chain is worn out, mm. */
  readonly lengthAtLimit: number;
  readonly done: boolean;
}

export type WearReason = 'linksImpossible' | 'lengthImpossible' | 'limitImpossible';

/** A chain's length as measured with a rule or a caliper, pin to pin. */
export interface MeasuredChain {
  readonly links: number;
  readonly length: number;
}

/** A measured length that differs from new by more than this part of it is a miscount of links. */
const MISCOUNT = 0.12;

/** Longer than new, in parts of it; or why the figures cannot be right. */
function elongation({ links, length }: MeasuredChain, pitch: number): Result<number, WearReason> {
  if (!(Number.isInteger(links) && links > 0)) return fail('linksImpossible');
  const longer = length / (links * pitch) - 1;
  return Math.abs(longer) < MISCOUNT ? succeed(longer) : fail('lengthImpossible');
}

/**
 * How much longer than new a chain lies over its sprockets, per cent: as measured, and nothing for one that measures
 * short or whose figures cannot be right.
 */
export function chainStretch(measured: MeasuredChain, pitch: number): number {
  const longer = elongation(measured, pitch);
  return longer.ok ? Math.max(0, 100 * longer.value) : 0;
}

/**
 * Wear from the length over `links` links, mm, pin to pin with the chain pulled tight: 100·(length / (links·pitch) −
 * 1). `limit` is the maker's, per cent. Refused for less than one link, a length so far from new that the links must
 * have been miscounted, and a limit that is not above zero.
 */
export function chainWear(
  measured: MeasuredChain,
  pitch: number,
  limit: number,
): Result<ChainWear, WearReason> {
  const longer = elongation(measured, pitch);
  if (!longer.ok) return longer;
  if (!(limit > 0 && limit < 100 * MISCOUNT)) return fail('limitImpossible');
  const percent = 100 * longer.value;
  const lengthAtLimit = measured.links * pitch * (1 + limit / 100);
  return succeed({ percent, limit, lengthAtLimit, done: percent >= limit });
}
