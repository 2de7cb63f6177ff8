/** A lesson as it lies in a file: its texts and trials, and the bike that it was made on. */
import type { BikeWithSetup } from '../document/document.ts';
import type { Lesson } from './lesson.ts';

export const LESSON_FORMAT = 'sidestance-lesson';
export const LESSON_SCHEMA = 1;

/** More than a class has time for, so that a damaged file does not fill the page. */
export const MOST_STEPS = 40;
export const MOST_TURNS = 40;
export const MOST_SHOWN = 40;
export const MOST_NOTES = 40;
export const MOST_MINUTES = 600;
/** The largest figure in a turn, in the adjuster's metric unit; nothing on a motorcycle is set by more. */
export const LARGEST_TURN = 10_000;

export interface FiledLesson {
  readonly lesson: Lesson;
  /** The bike and setup it was made on; null where it is meant for any bike. */
  readonly asSet: BikeWithSetup | null;
}
