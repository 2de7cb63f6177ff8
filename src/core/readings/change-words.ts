/** The words for a change of a figure: which of them hold depends on which side of zero the figure lies before and after. */

/** A word for a change upward and one for a change downward. */
export interface Ways {
  readonly more: string;
  readonly less: string;
}

/** The words of a figure for a change; those below zero are needed where the figure can lie there and its words name a size. */
export interface ChangeWords extends Ways {
  /** With the figure below zero before or after the change. */
  readonly belowZero?: Ways;
  /** With the figure above zero on one side of the change and below it on the other; those below zero where this is left out. */
  readonly acrossZero?: Ways;
}

/**
 * The two words that hold between two figures, in any unit: the plain ones where neither lies below zero. Always has an
 * answer.
 */
export function waysBetween(
  { more, less, belowZero, acrossZero }: ChangeWords,
  before: number,
  after: number,
): Ways {
  if (before >= 0 && after >= 0) return { more, less };
  const across = before * after < 0 ? acrossZero : undefined;
  return across ?? belowZero ?? { more, less };
}

/** The word for the change from `before` to `after`, in any unit; of two equal figures the word for less. Always has an answer. */
export function changeWord(words: ChangeWords, before: number, after: number): string {
  const { more, less } = waysBetween(words, before, after);
  return after > before ? more : less;
}
