/** Tries a step of a lesson on a bike; one that this program cannot read is refused for the reason found in its file. */
import { tryOut, type NoTrial, type Tried } from '../core/effects/trial.ts';
import type { AsSet } from '../core/effects/turn.ts';
import type { LessonCheck, LessonStep } from './lesson.ts';

export function tryStep(asSet: AsSet, step: LessonStep | LessonCheck): Tried | NoTrial {
  return step.unread?.no ?? tryOut(asSet, step);
}
