/** Readings as plain values, for comparing whole bikes. */
import { READINGS } from '../../src/core/readings/all-readings.ts';
import type { Stance } from '../../src/core/standing/stance.ts';

/** Every reading of a stance by its key, numbers in the core's units, absences as their reason. */
export function everyReading(stance: Stance): Map<string, number | string> {
  return new Map(
    READINGS.map((reading) => {
      const found = reading.read(stance);
      return [reading.key, typeof found === 'number' ? found : found.reason];
    }),
  );
}
