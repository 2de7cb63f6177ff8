/** Tests of a lesson from a link: it runs on its own bike beside the user's work, is kept only when asked, and a refusal leaves all as it was. */
import { expect, it } from 'vitest';
import { DEMO_BIKES } from '../../document/demos/demo-bikes.ts';
import { setAdjuster } from '../../document/edits.ts';
import { saveLesson } from '../../lessons/save-lesson.ts';
import { shortLesson } from '../../lessons/short-lesson.ts';
import { makeLessonLink } from '../../storage/link/lesson-link.ts';
import { memoryStore } from '../../storage/memory-store.ts';
import { Workbench } from '../workbench.svelte.ts';
import { LessonVisit } from './lesson-visit.svelte.ts';
import { Lessons } from './lessons.svelte.ts';
import { OwnLessons, type OwnLesson } from './own-lessons.svelte.ts';

/** A lesson that somebody else made, and its link. */
async function sent(): Promise<{ lesson: OwnLesson; fragment: string }> {
  const bench = new Workbench(DEMO_BIKES[1]);
  bench.session.commit((from) => setAdjuster(from, 'shockLength', 5), 'Shock length');
  const own = bench.stateOf(OwnLessons);
  await own.make();
  const [lesson] = own.list;
  const made = await makeLessonLink(shortLesson(lesson), '');
  if (!made.ok) throw new Error(made.reason.kind);
  return { lesson, fragment: made.value };
}

it('runs on the bike that came with it, and leaves the user’s bike and lessons the very same', async () => {
  const { lesson, fragment } = await sent();
  const bench = new Workbench(DEMO_BIKES[0]);
  const own = bench.stateOf(OwnLessons);
  const { history } = bench.session;
  const { list } = own;
  const visit = new LessonVisit(bench);
  await visit.open(fragment);
  expect(visit.refusal).toBeNull();
  expect(visit.shown?.lesson.title).toBe(lesson.lesson.title);
  const lessons = new Lessons(bench);
  if (visit.shown !== null) lessons.begin(visit.shown.lesson, visit.shown.asSet);
  expect(lessons.bike).toEqual(lesson.asSet?.bike);
  while (!lessons.isOver) lessons.forward();
  visit.leave();
  expect(visit.shown).toBeNull();
  expect(bench.session.history).toBe(history);
  expect(own.list).toBe(list);
});

it('is kept among the user’s own to the last digit when asked', async () => {
  const { lesson, fragment } = await sent();
  const bench = new Workbench(DEMO_BIKES[0]);
  const visit = new LessonVisit(bench);
  await visit.open(fragment);
  const store = memoryStore(null);
  expect(await visit.keep(store)).toBe('The lesson is among your own now: Lessons, Your own.');
  const { list } = bench.stateOf(OwnLessons);
  expect(saveLesson(list[list.length - 1])).toBe(saveLesson(lesson));
  const kept = await store.lessons();
  expect(kept.ok && kept.value.map(({ text }) => text)).toEqual([saveLesson(lesson)]);
  expect(visit.shown).toBeNull();
});

it('a link that is cut off says so, and what came before it stays', async () => {
  const { lesson, fragment } = await sent();
  const visit = new LessonVisit(new Workbench(DEMO_BIKES[0]));
  await visit.open(fragment);
  await visit.open(fragment.slice(0, -20));
  expect(visit.refusal).toBe(
    'The link is cut off or damaged. Copy it again from its first letter to its last.',
  );
  expect(visit.shown?.lesson.title).toBe(lesson.lesson.title);
  await visit.open('#bike=1.a.b');
  expect(visit.shown?.lesson.title).toBe(lesson.lesson.title);
});
