/** The words for a change of a figure: which of them hold depends on which side of zero the figure lies before and after. */
import { isBelow } from '../units/least-told.ts';

/** A word for a change upward and one for a change downward. */
export interface Ways {
  readonly more: string;
  readonly less: string;
}

/** What is said of how a change feels, by its size. */
export interface FeltWords {
  /** The change from which on a rider notices it, metric. Common practice, no source. */
  readonly from: number;
  /** Below that: what a gauge shows, and nothing of feel; the slight words where this is left out. */
  readonly gauge?: Ways;
  /** From there up to so many times as much, as FELT_CLEARLY says; the plain words with “slightly” where this is left out. */
  readonly slightly?: Ways;
}

/** A change of so many times what a rider notices is named without “slightly”. A choice, no source. */
const FELT_CLEARLY = 2;

/** The words of a figure for a change; those below zero are needed where the figure can lie there and its words name a size. */
export interface ChangeWords extends Ways {
  /** With the figure below zero before or after the change. */
  readonly belowZero?: Ways;
  /** With the figure above zero on one side of the change and below it on the other; those below zero where this is left out. */
  readonly acrossZero?: Ways;
  /** Where its plain words are those of a large change; left out where they hold for any. */
  readonly felt?: FeltWords;
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

/**
 * The two words that hold between two metric figures, for a change of that size. Below zero there is no feel to tell by
 * size. Always has an answer.
 */
export function waysBySize(words: ChangeWords, before: number, after: number): Ways {
  const { felt, more, less } = words;
  if (felt === undefined || before < 0 || after < 0 || !isBelow(after - before, FELT_CLEARLY * felt.from))
    return waysBetween(words, before, after);
  const slightly = felt.slightly ?? { more: slight(more), less: slight(less) };
  return isBelow(after - before, felt.from) ? (felt.gauge ?? slightly) : slightly;
}

/** "holds up slightly more", "slightly quicker steering": before the word that says how much, else before all. */
const slight = (word: string): string =>
  word.replace(/^(.*?)(more|less|quicker|slower|steadier)|^/u, '$1slightly $2');

/** The one of them that holds from `before` to `after`; of two equal figures the word for less. */
export function wordBySize(words: ChangeWords, before: number, after: number): string {
  const { more, less } = waysBySize(words, before, after);
  return after > before ? more : less;
}

/** The word for the change from `before` to `after`, in any unit; of two equal figures the word for less. Always has an answer. */
export function changeWord(words: ChangeWords, before: number, after: number): string {
  const { more, less } = waysBetween(words, before, after);
  return after > before ? more : less;
}
