/** A reading in its metric number. */
import type { StandingBike } from '../riding/stand-bike.ts';
import { QUANTITIES } from '../units/all-quantities.ts';
import type { Absent } from './absent.ts';
import type { Reading } from './reading.ts';

/** The reading in the metric number of its quantity (mm, degrees, %, g), or why it has none. */
export function metricReading({ quantity, read }: Reading, on: StandingBike): number | Absent {
  const value = read(on);
  return typeof value === 'number' ? QUANTITIES[quantity].fromCore(value) : value;
}
