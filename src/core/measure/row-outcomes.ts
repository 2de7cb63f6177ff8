/** What each row of a fit is worth: its residual, how far the others check it, and the slip that they would reveal. */
import type { Fit } from './fit-values.ts';

/** By fitted row. */
export interface RowWorth {
  readonly residual: number;
  readonly redundancy: number;
  readonly smallestSlipRevealed: number | null;
  /** Residual over its own standard deviation: beyond 3.29 once in a thousand rows by chance; 0 where nothing checks it. */
  readonly test: number;
}

/**
 * Half of this is how far a test lies from nothing before it counts, half how sure it then is: 3.29 + 1.64 for one row
 * in a thousand suspected by chance and 95 % found. Source: W. Baarda; A testing procedure for use in geodetic
 * networks; 1968 (from memory).
 */
const REVEALED_WITH = 4.93;
/** Below this nothing checks the row. */
const UNCHECKED = 0.05;

/** Worth of every fitted row. */
export function rowWorths(fit: Fit): readonly RowWorth[] {
  return fit.rows.map(({ measured, sd }, i) => {
    const redundancy = Math.max(0, 1 - leverage(fit, i, i));
    const residual = measured - fit.figures[i];
    const checked = redundancy >= UNCHECKED;
    return {
      residual,
      redundancy,
      smallestSlipRevealed: checked ? (REVEALED_WITH * sd) / Math.sqrt(redundancy) : null,
      test: checked ? residual / (sd * Math.sqrt(redundancy)) : 0,
    };
  });
}

/** Correlation of the tests of two rows: near 1 they cannot be told apart. */
export function testCorrelation(fit: Fit, i: number, j: number): number {
  const own = (1 - leverage(fit, i, i)) * (1 - leverage(fit, j, j));
  return own > 0 ? -leverage(fit, i, j) / Math.sqrt(own) : 0;
}

/** How much of row j goes into what the fit makes of row i, both over their sd. */
function leverage({ parts, rank }: Fit, i: number, j: number): number {
  let sum = 0;
  for (let k = 0; k < rank; k++) sum += parts.left[k][i] * parts.left[k][j];
  return sum;
}
