/** All readings in the words of a bike's drive; keys and numbers are the same. */
import { BELT } from '../core/parts/drive-noun.ts';
import type { DriveKind } from '../core/parts/drive-kind.ts';
import { READINGS } from '../core/readings/all-readings.ts';
import type { Reading } from '../core/readings/reading.ts';

const OF_BELT: readonly Reading[] = READINGS.map((reading) => ({ ...reading, ...reading.texts?.(BELT) }));

/** Readings are written for a chain; a belt's texts come from the same definitions with the belt's nouns. */
export function readingsOf(kind: DriveKind): readonly Reading[] {
  return kind === 'belt' ? OF_BELT : READINGS;
}
