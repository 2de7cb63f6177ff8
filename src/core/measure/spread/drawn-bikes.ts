/** Bikes drawn by lot from all that the rows allow: where a reading lies in most of them, its bends included. */
import { READINGS } from '../../readings/all-readings.ts';
import type { Reading } from '../../readings/reading.ts';
import type { Fit } from '../fit-values.ts';
import { readValues } from '../measured-readings.ts';

export interface DrawsAsked {
  /** The reading by its key. */
  readonly reading: string;
  readonly count: number;
}

/** The middle 95 % of a reading among the bikes drawn, in its metric unit, and its median. */
export interface DrawnRange {
  readonly least: number;
  readonly middle: number;
  readonly most: number;
}

/** What is left out at each end. */
const TAIL = 0.025;
/** How far along each fixed direction the bend of a reading is taken, standard deviations. */
const REACH = 1.5;

/** A reading by standard deviations along the fixed directions: its value, slopes, and halves of its bends. */
interface Surface {
  readonly value: number;
  readonly slopes: readonly number[];
  readonly bends: readonly (readonly number[])[];
}

/**
 * Draws bikes from the covariance of the fit and reads each on the surface of second order through bikes that were stood
 * as they were measured. `normal` gives numbers with mean 0 and standard deviation 1. Null where one of those bikes has no
 * such reading. Whether the rows fix it is not looked at here. Source: JCGM 101:2008, 7, from memory.
 */
export function drawnRange(
  fit: Fit,
  { reading: key, count }: DrawsAsked,
  normal: () => number,
): DrawnRange | null {
  const reading = READINGS.find((each) => each.key === key);
  const surface = reading === undefined ? null : surfaceOf(fit, reading);
  if (surface === null) return null;
  const { value, slopes, bends } = surface;
  const { length } = slopes;
  const steps = new Float64Array(length);
  const found = new Float64Array(count);
  for (let n = 0; n < count; n++) {
    for (let k = 0; k < length; k++) steps[k] = normal();
    let sum = value;
    for (let k = 0; k < length; k++) {
      let slope = slopes[k];
      for (let j = 0; j <= k; j++) slope += bends[k][j] * steps[j];
      sum += slope * steps[k];
    }
    found[n] = sum;
  }
  found.sort();
  const at = (part: number): number => found[Math.min(count - 1, Math.floor(part * count))];
  return { least: at(TAIL), middle: at(0.5), most: at(1 - TAIL) };
}

/** The surface of second order of a reading; null where the bike has none at one of its places. */
function surfaceOf({ origin, values, touched, parts, rank }: Fit, reading: Reading): Surface | null {
  const read = (steps: readonly (readonly [k: number, by: number])[]): number => {
    const moved = [...values];
    for (const [k, by] of steps)
      for (const [j, place] of touched.entries()) moved[place] += (by * parts.right[k][j]) / parts.values[k];
    return readValues(origin, moved, [reading])?.[0] ?? NaN;
  };
  const value = read([]);
  const fixed = Array.from({ length: rank }, (_, k) => k);
  const ahead = fixed.map((k) => read([[k, REACH]]));
  const back = fixed.map((k) => read([[k, -REACH]]));
  const slopes = fixed.map((k) => (ahead[k] - back[k]) / (2 * REACH));
  const bends = fixed.map((k) =>
    fixed.slice(0, k + 1).map((j) => {
      if (j === k) return (ahead[k] + back[k] - 2 * value) / (2 * REACH ** 2);
      const both = read([
        [k, REACH],
        [j, REACH],
      ]);
      return (both - ahead[k] - ahead[j] + value) / REACH ** 2;
    }),
  );
  return [value, ...slopes, ...bends.flat()].every(Number.isFinite) ? { value, slopes, bends } : null;
}
