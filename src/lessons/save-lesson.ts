/** Saving a lesson: to the text of its file. */
import { FORMAT, SCHEMA } from '../document/document.ts';
import { orderedBike } from '../document/save-document.ts';
import type { Lesson, LessonCheck, LessonStep } from './lesson.ts';
import { LESSON_FORMAT, LESSON_SCHEMA, type FiledLesson } from './lesson-file.ts';

/** The text of a lesson, always with the same order of fields. Its bike stands in it as a bike's file does, without a baseline. */
export function saveLesson(filed: FiledLesson): string {
  const { asSet } = filed;
  const whole = {
    format: LESSON_FORMAT,
    schema: LESSON_SCHEMA,
    ...lessonJson(filed.lesson),
    ...(asSet !== null && { asSet: { format: FORMAT, schema: SCHEMA, ...orderedBike(asSet) } }),
  };
  return `${JSON.stringify(whole, null, 2)}\n`;
}

/** The lesson itself as JSON, without format and bike. */
export function lessonJson(lesson: Lesson): object {
  const { title, goal, minutes, caution, prepare, unreadPrepare, shows, steps, check, notes } = lesson;
  return {
    title,
    goal,
    minutes,
    ...(caution !== undefined && { caution }),
    prepare: unreadPrepare?.filed ?? prepare,
    shows,
    steps: steps.map((step) => {
      const { point, because, otherwise } = step;
      return { ...trialOf(step), point, because, otherwise };
    }),
    check: trialOf(check),
    notes,
  };
}

function trialOf({ act, from, turns, state, figure, unread }: LessonStep | LessonCheck): object {
  if (unread !== undefined) return { ...unread.filed, act };
  return { act, ...(from !== undefined && { from }), turns, state, figure };
}
