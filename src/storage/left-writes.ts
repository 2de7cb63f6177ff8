/** Changes that a page had not saved when it was left: they wait in the one storage of a browser that takes a text at once, until the store is opened next. */
import type { BikeWrite } from './bike-store.ts';

const PREFIX = 'sidestance-left';
const keyOf = (id: string, writer: string): string => `${PREFIX} ${id} ${writer}`;

/** The browser's storage of texts; null where it is not there or forbidden, as looking at it may throw. */
function texts(): Storage | null {
  try {
    return typeof localStorage === 'undefined' ? null : localStorage;
  } catch {
    return null;
  }
}

/** Puts a write down before the page is gone; false where there is no room or no storage, and only the save itself is left. */
export function leaveWrite(write: BikeWrite): boolean {
  const storage = texts();
  try {
    storage?.setItem(keyOf(write.id, write.writer), JSON.stringify(write));
    return storage !== null;
  } catch {
    return false;
  }
}

/** The writer's work is saved, and need not be settled. */
export function forgetLeft(id: string, writer: string): void {
  texts()?.removeItem(keyOf(id, writer));
}

/** Where what was left waits, key by key. */
export function leftKeys(): string[] {
  return Object.keys(texts() ?? {}).filter((key) => key.startsWith(PREFIX));
}

export function isAnyLeft(): boolean {
  return leftKeys().length > 0;
}
