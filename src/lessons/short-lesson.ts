/** A lesson as short as its JSON gets, for a link: its bike without every value that opening fills in silently. */
import { fail, type Result } from '../core/numeric/result.ts';
import { FORMAT } from '../document/document.ts';
import { isJsonObject, ownValue } from '../document/json/json.ts';
import type { OpenReason } from '../document/json/open-reason.ts';
import { readJson } from '../document/json/read-json.ts';
import { shortBike } from '../document/short-form.ts';
import { LESSON_FORMAT, LESSON_SCHEMA, type FiledLesson } from './lesson-file.ts';
import { openLessonJson, type OpenedLesson } from './open-lesson.ts';
import { lessonJson } from './save-lesson.ts';

/** The lesson with its bike in its short form, as JSON text. */
export function shortLesson({ lesson, asSet }: FiledLesson): string {
  return JSON.stringify({
    schema: LESSON_SCHEMA,
    ...lessonJson(lesson),
    ...(asSet !== null && { asSet: shortBike(asSet) }),
  });
}

/** Opens a short form, judged as a lesson's file is. Never throws. */
export function openShortLesson(text: string): Result<OpenedLesson, OpenReason> {
  const json = readJson(text);
  if (!json.ok) return json;
  if (!isJsonObject(json.value)) return fail({ kind: 'notOurs', sentence: 'What was sent is not a lesson.' });
  const asSet = ownValue(json.value, 'asSet');
  return openLessonJson({
    ...json.value,
    format: LESSON_FORMAT,
    ...(isJsonObject(asSet ?? null) && { asSet: { ...(asSet as object), format: FORMAT } }),
  });
}
