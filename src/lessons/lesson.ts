/** What a lesson is: data that runs on any bike, in steps of predict, do, look and why. */
import type { Trial, UnknownName, Way } from '../core/effects/trial.ts';
import type { Turn } from '../core/effects/turn.ts';
import type { Json, JsonObject } from '../document/json/json.ts';

/** A trial of a file that names what this program does not have: skipped for that reason, and saved as it stood there. */
export interface UnreadTrial {
  readonly filed: JsonObject;
  readonly no: UnknownName;
}

/** How the bike is made ready, of a file that names an adjuster which this program does not have: no step can stand then. */
export interface UnreadPrepare {
  readonly filed: readonly Json[];
  readonly no: UnknownName;
}

/** One step. A person predicts its figure before it shows. */
export interface LessonStep extends Trial {
  /** What is done at the bike, as an act without a figure. */
  readonly act: string;
  /** Which way the figure goes where the lesson's point holds; null where the lesson expects neither way. */
  readonly point: Way | null;
  /** Why, said where the figure went that way; with no point expected, said always, and then without a direction. */
  readonly because: string;
  /** What may be behind it where the figure went another way; without a direction. */
  readonly otherwise: string;
  readonly unread?: UnreadTrial;
}

/** One question at the end. Its answer is computed from the bike. */
export interface LessonCheck extends Trial {
  /** What would be done, as a question leads up to it, such as "You turn the fork tubes down". */
  readonly act: string;
  readonly unread?: UnreadTrial;
}

export interface Lesson {
  readonly key: string;
  readonly title: string;
  /** What a person can do or explain afterwards. */
  readonly goal: string;
  readonly minutes: number;
  /** What could hurt somebody who does this on a real bike; shown on every page of the lesson. */
  readonly caution?: string;
  /** How any bike is made ready for it; nothing where it starts from the bike as it stands. */
  readonly prepare: readonly Turn[];
  readonly unreadPrepare?: UnreadPrepare;
  /** Readings that stand beside the figure once it is looked at; all are hidden before. */
  readonly shows: readonly string[];
  readonly steps: readonly LessonStep[];
  readonly check: LessonCheck;
  /** For the trainer alone: what to bring, to ask, and to look out for. */
  readonly notes: readonly string[];
}
