/** Opens a bike from the store, keeping its text as it was when it had to be repaired. */
import { succeed, type Result } from '../core/numeric/result.ts';
import { openDocument } from '../document/open-document.ts';
import type { Opened } from '../document/open-json.ts';
import type { OpenReason } from '../document/json/open-reason.ts';
import type { BikeStore } from './bike-store.ts';
import type { StorageFault } from './storage-fault.ts';

export interface OpenedFromStore extends Opened {
  /** Why the text as it was before the repairs could not be kept; null when it was, or when nothing was repaired. */
  readonly originalLost: StorageFault | null;
}

/**
 * Opens `text`, stored or read from a file, as the bike `id`. When opening repaired anything, the text as it was goes
 * to the store's originals first. A text that cannot be opened stays in the store as it is. `now` is in ms since 1970, UTC.
 */
export async function openStored(
  store: BikeStore,
  id: string,
  text: string,
  now: number,
): Promise<Result<OpenedFromStore, OpenReason>> {
  const opened = openDocument(text);
  if (!opened.ok) return opened;
  if (opened.value.repairs.length === 0) return succeed({ ...opened.value, originalLost: null });
  const kept = await store.keepOriginal({ id, keptAt: now, text });
  return succeed({ ...opened.value, originalLost: kept.ok ? null : kept.reason });
}
