/** Decides what a save replaces and what it keeps, the same for every kind of store. */
import type { BikeWrite, StoredBike } from './bike-store.ts';

export interface Settled {
  readonly next: StoredBike;
  /** What was there and must be kept beside, because the writer did not know of it; null when nothing is lost. */
  readonly kept: StoredBike | null;
}

/**
 * `there` is what is stored under the bike's id. A writer's own earlier save is part of its line of work, even when
 * it never learned that the save came through; anybody else's is kept unless the writer had opened just that or both
 * say the same.
 */
export function settleWrite(there: StoredBike | null, write: BikeWrite): Settled {
  const { known, ...rest } = write;
  const next = { ...rest, revision: Math.max(there?.revision ?? 0, known ?? 0) + 1 };
  const lost =
    there !== null && there.revision !== known && there.writer !== write.writer && there.text !== write.text;
  return { next, kept: lost ? there : null };
}
