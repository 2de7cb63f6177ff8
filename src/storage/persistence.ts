/** Whether the browser promises to keep what is stored, also when the device runs short of room. */

/** `kept`: only the user can clear it. `mayGo`: the browser may. `unasked`: the browser has no such promise to give. */
export type Persistence = 'kept' | 'mayGo' | 'unasked';

/** The part of the browser's storage that answers. */
type StoragePromise = Pick<StorageManager, 'persist' | 'persisted'>;

/** Asks the browser to keep what is stored, unless it does already. */
export async function askToPersist(
  storage: StoragePromise | undefined = navigator.storage as StorageManager | undefined,
): Promise<Persistence> {
  if (storage === undefined) return 'unasked';
  try {
    return (await storage.persisted()) || (await storage.persist()) ? 'kept' : 'mayGo';
  } catch {
    // A browser that forbids storage also refuses this call.
    return 'unasked';
  }
}
