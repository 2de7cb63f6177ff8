/** Finds the bike in the store that says the very same as one from a file, which has no id to be known by. */
import { succeed, type Result } from '../core/numeric/result.ts';
import type { BikeDocument } from '../document/document.ts';
import { openDocument } from '../document/open-document.ts';
import { saveDocument } from '../document/save-document.ts';
import type { BikeStore } from './bike-store.ts';
import type { StorageFault } from './storage-fault.ts';

/** Its id; null where no bike of the store has this name, measures, setup and baseline. */
export async function findSameBike(
  store: BikeStore,
  document: BikeDocument,
): Promise<Result<string | null, StorageFault>> {
  const shelf = await store.list();
  if (!shelf.ok) return shelf;
  const text = saveDocument(document);
  for (const { id, name } of shelf.value.bikes) {
    if (name !== document.bike.name) continue;
    const there = await store.load(id);
    if (!there.ok) return there;
    if (there.value !== null && savedAnew(there.value.text) === text) return succeed(id);
  }
  return succeed(null);
}

/** A stored text as this program writes it: a former one wrote the same bike otherwise. */
export function savedAnew(text: string): string {
  const opened = openDocument(text);
  return opened.ok ? saveDocument(opened.value.document) : text;
}
