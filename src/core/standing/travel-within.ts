/** The end of a travel, taken back as a reading writes it. */
import { length } from '../units/length.ts';

/** A travel beyond its end by no more than this is that end, written to its last digit, mm. */
const WRITTEN = 0.5 * 10 ** -length.metric.digits + 1e-9;

/**
 * Travel used, mm, held to `most` where it lies beyond by no more than rounding to the last digit written; further beyond
 * it stays as it is. Example: used 123.5 mm, most 123.46 mm → 123.46 mm.
 */
export function travelWithin(used: number, most: number): number {
  return used > most && used <= most + WRITTEN ? most : used;
}
