/** Finds a place to keep bikes: the browser's database, or this page's memory when there is no other. */
import type { BikeStore } from './bike-store.ts';
import { memoryStore } from './memory-store.ts';

/** `preferred`, once it has shown that it can be read; else a store in memory that carries the reason. */
export async function openStore(preferred: BikeStore): Promise<BikeStore> {
  const tried = await preferred.list();
  if (tried.ok) return preferred;
  preferred.close();
  return memoryStore(tried.reason);
}
