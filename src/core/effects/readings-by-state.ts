/** Every reading in every ride state at once, as a setup sheet keeps them. */
import type { Setup } from '../adjusters/setup.ts';
import type { Bike } from '../parts/bike.ts';
import { READINGS } from '../readings/all-readings.ts';
import { metricReading } from '../readings/metric-reading.ts';
import { rideTable } from './ride-table.ts';

/**
 * The readings of a bike as set, by ride state and by the reading's key, in the metric units of files: mm, deg, kg, N,
 * g, %. A reading without an answer is left out, and so is a state in which the bike does not stand.
 */
export function readingsByState(bike: Bike, setup: Setup): Record<string, Record<string, number>> {
  return Object.fromEntries(
    rideTable(bike, setup).flatMap(({ state, found }) => {
      if (!found.ok) return [];
      const figures = READINGS.flatMap((reading): [string, number][] => {
        const value = metricReading(reading, found);
        return typeof value === 'number' ? [[reading.key, value]] : [];
      });
      return [[state, Object.fromEntries(figures)]];
    }),
  );
}
