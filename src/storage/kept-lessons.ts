/** A trainer's own lessons in the store: what its records hold, and those that former builds kept beside it. */
import * as v from 'valibot';
import type { StoredLesson } from './bike-store.ts';

const fields = v.object({
  id: v.string(),
  madeAt: v.fallback(v.pipe(v.number(), v.finite()), 0),
  text: v.string(),
});

type Made = Pick<StoredLesson, 'madeAt'>;

export function asMade(a: Made, b: Made): number {
  return a.madeAt - b.madeAt;
}

/** The lessons among the records of a shelf, as they were made. */
export function lessonsAmong(records: readonly unknown[]): StoredLesson[] {
  return records
    .flatMap((record) => {
      const read = v.safeParse(fields, record);
      return read.success ? [read.output] : [];
    })
    .sort(asMade);
}

/** Former builds kept all lessons as one text under this name, where no file of bikes could have them. */
const FORMER_KEY = 'sidestance-lessons';

/** Where texts by name are kept; the browser's own, or one in a test. */
export type TextStore = Pick<Storage, 'getItem' | 'removeItem'>;

/** The lessons that a former build kept, as texts. Empty where there are none, or where the browser keeps nothing. */
export function formerLessons(store: () => TextStore = () => localStorage): readonly string[] {
  try {
    const found: unknown = JSON.parse(store().getItem(FORMER_KEY) ?? '[]');
    return Array.isArray(found) ? found.filter((each) => typeof each === 'string') : [];
  } catch {
    return [];
  }
}

/** Clears them away, once the store holds each. */
export function clearFormerLessons(store: () => TextStore = () => localStorage): void {
  store().removeItem(FORMER_KEY);
}
