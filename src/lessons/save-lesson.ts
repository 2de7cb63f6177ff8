/** Saving a lesson: to the text of its file. */
import { FORMAT, SCHEMA } from '../document/document.ts';
import { orderedBike } from '../document/save-document.ts';
import type { LessonCheck, LessonStep } from './lesson.ts';
import { LESSON_FORMAT, LESSON_SCHEMA, type FiledLesson } from './lesson-file.ts';

/** The text of a lesson, always with the same order of fields. Its bike stands in it as a bike's file does, without a baseline. */
export function saveLesson({ lesson, asSet }: FiledLesson): string {
  const { title, goal, minutes, caution, prepare, shows, steps, check, notes } = lesson;
  const filed = {
    format: LESSON_FORMAT,
    schema: LESSON_SCHEMA,
    title,
    goal,
    minutes,
    ...(caution !== undefined && { caution }),
    prepare,
    shows,
    steps: steps.map((step) => {
      const { point, because, otherwise } = step;
      return { ...trialOf(step), point, because, otherwise };
    }),
    check: trialOf(check),
    notes,
    ...(asSet !== null && { asSet: { format: FORMAT, schema: SCHEMA, ...orderedBike(asSet) } }),
  };
  return `${JSON.stringify(filed, null, 2)}\n`;
}

function trialOf({ act, from, turns, state, figure }: LessonStep | LessonCheck): object {
  return { act, ...(from !== undefined && { from }), turns, state, figure };
}
