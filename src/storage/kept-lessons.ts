/** A trainer's own lessons, kept in this browser as the texts of their files. */

const KEY = 'sidestance-lessons';

/** Where texts by name are kept; the browser's own, or one in a test. */
export type TextStore = Pick<Storage, 'getItem' | 'setItem'>;

/** The texts kept; empty when nothing was kept or the browser keeps nothing. */
export function keptLessons(store: () => TextStore = () => localStorage): readonly string[] {
  try {
    const found: unknown = JSON.parse(store().getItem(KEY) ?? '[]');
    return Array.isArray(found) ? found.filter((each) => typeof each === 'string') : [];
  } catch {
    return [];
  }
}

/** Keeps the texts in place of the earlier ones. False where the browser keeps nothing or has no room. */
export function keepLessons(texts: readonly string[], store: () => TextStore = () => localStorage): boolean {
  try {
    store().setItem(KEY, JSON.stringify(texts));
    return true;
  } catch {
    return false;
  }
}
