/** One reading ready to be shown: what it is, its number now and in the baseline. */
import type { AbsentReason, Reading } from '../../core/readings/reading.ts';

export interface ReadingRow {
  readonly reading: Reading;
  /** The metric number (mm, degrees, %, g), or why there is none. */
  readonly value: number | AbsentReason;
  readonly baseline: number | AbsentReason;
}
