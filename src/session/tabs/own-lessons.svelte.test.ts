/** A trainer's own lessons: made of the page's state, edited, opened from files whole or with a reason, removed and brought back. */
import { expect, it } from 'vitest';
import { DEMO_BIKES } from '../../document/demos/demo-bikes.ts';
import { setAdjuster } from '../../document/edits.ts';
import { saveLesson } from '../../lessons/save-lesson.ts';
import { Workbench } from '../workbench.svelte.ts';
import { Lessons } from './lessons.svelte.ts';
import { OwnLessons } from './own-lessons.svelte.ts';

function made(): { bench: Workbench; own: OwnLessons } {
  const bench = new Workbench(DEMO_BIKES[0]);
  bench.session.commit((from) => setAdjuster(from, 'shockLength', 5), 'Shock length');
  const own = bench.stateOf(OwnLessons);
  own.make();
  return { bench, own };
}

const file = (text: string): File => new File([text], 'lesson.json');

it('a lesson made of the page leaves the bike, its history and its baseline the very same objects', () => {
  const { bench, own } = made();
  const { history, document } = bench.session;
  const lessons = bench.stateOf(Lessons);
  const [each] = own.list;
  lessons.begin(each.lesson, each.asSet);
  while (!lessons.isOver) lessons.forward();
  expect(lessons.steps.every(({ tried }) => tried.ok)).toBe(true);
  lessons.leave();
  expect(bench.session.history).toBe(history);
  expect(bench.session.document).toBe(document);
});

it('edited words change no expectation, and a step that tries something else expects what that does', () => {
  const { own } = made();
  const [{ lesson }] = own.list;
  const [step] = lesson.steps;
  own.change({ ...lesson, steps: [{ ...step, act: 'Raise it', point: null }] });
  expect(own.edited?.lesson.steps[0]).toMatchObject({ act: 'Raise it', point: null });
  own.change({ ...lesson, steps: [{ ...step, figure: 'swingarmAngle' }] });
  expect(own.edited?.lesson.steps[0].point).toBe('more');
  own.change({
    ...lesson,
    steps: [{ ...step, figure: 'swingarmAngle', turns: [{ adjuster: 'shockLength', by: -4 }] }],
  });
  expect(own.edited?.lesson.steps[0].point).toBe('less');
});

it('a file opens beside what is here; one that is cut off changes nothing and says so', async () => {
  const { own } = made();
  const text = saveLesson(own.list[0]);
  await own.open(file(text));
  expect(own.list).toHaveLength(2);
  expect(own.message?.kind).toBe('done');
  expect(own.list[1].lesson).toEqual({ ...own.list[0].lesson, key: 'filed' });
  const before = own.list;
  await own.open(file(text.slice(0, 200)));
  expect(own.list).toBe(before);
  expect(own.message?.text).toBe(
    'lesson.json was not opened. The file breaks off before its end; part of it is missing.',
  );
});

it('a step whose reading is not there is skipped with the reason, and saved again as it was', async () => {
  const { bench, own } = made();
  const [{ lesson, asSet }] = own.list;
  const steps = [{ ...lesson.steps[0], figure: 'grip' }, ...lesson.steps];
  await own.open(file(saveLesson({ lesson: { ...lesson, steps }, asSet })));
  const opened = own.list[1];
  const lessons = bench.stateOf(Lessons);
  lessons.begin(opened.lesson, opened.asSet);
  lessons.forward();
  expect(lessons.now?.tried).toEqual({ ok: false, reason: 'noSuchFigure' });
  lessons.forward();
  expect([lessons.at, lessons.now?.tried.ok]).toEqual([1, true]);
  expect(saveLesson(opened)).toContain('"figure": "grip"');
});

it('what was removed comes back to its place', () => {
  const { own } = made();
  own.make();
  const [first, second] = own.list;
  own.remove(first);
  expect(own.list).toEqual([second]);
  own.bringBack();
  expect(own.list).toEqual([first, second]);
});
