/** A trainer's own lessons: made of the page's state, edited, opened from files whole or with a reason, removed and brought back. */
import { expect, it, vi } from 'vitest';
import { fail } from '../../core/numeric/result.ts';
import { DEMO_BIKES } from '../../document/demos/demo-bikes.ts';
import { setAdjuster } from '../../document/edits.ts';
import { saveLesson } from '../../lessons/save-lesson.ts';
import type { BikeStore } from '../../storage/bike-store.ts';
import { memoryStore } from '../../storage/memory-store.ts';
import { storageFault } from '../../storage/storage-fault.ts';
import { Workbench } from '../workbench.svelte.ts';
import { Lessons } from './lessons.svelte.ts';
import { OwnLessons } from './own-lessons.svelte.ts';

async function made(store: BikeStore = memoryStore(null)): Promise<{ bench: Workbench; own: OwnLessons }> {
  const bench = new Workbench(DEMO_BIKES[0]);
  bench.session.commit((from) => setAdjuster(from, 'shockLength', 5), 'Shock length');
  const own = bench.stateOf(OwnLessons);
  await own.show(store);
  await own.make();
  return { bench, own };
}

const file = (text: string): File => new File([text], 'lesson.json');

it('a lesson made of the page leaves the bike, its history and its baseline the very same objects', async () => {
  const { bench, own } = await made();
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

it('edited words change no expectation, and a step that tries something else expects what that does', async () => {
  const { own } = await made();
  const [{ lesson }] = own.list;
  const [step] = lesson.steps;
  await own.change({ ...lesson, steps: [{ ...step, act: 'Raise it', point: null }] });
  expect(own.edited?.lesson.steps[0]).toMatchObject({ act: 'Raise it', point: null });
  await own.change({ ...lesson, steps: [{ ...step, figure: 'swingarmAngle' }] });
  expect(own.edited?.lesson.steps[0].point).toBe('more');
  await own.change({
    ...lesson,
    steps: [{ ...step, figure: 'swingarmAngle', turns: [{ adjuster: 'shockLength', by: -4 }] }],
  });
  expect(own.edited?.lesson.steps[0].point).toBe('less');
});

it('a file opens beside what is here; one that is cut off changes nothing and says so', async () => {
  const { own } = await made();
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
  const { bench, own } = await made();
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

it('where the bike cannot be made ready every step is skipped with the reason, and the file is saved again as it was', async () => {
  const { bench, own } = await made();
  const { history } = bench.session;
  const [{ lesson, asSet }] = own.list;
  const filed = JSON.parse(saveLesson({ lesson, asSet })) as object;
  const prepare = [{ adjuster: 'steeringDamper', to: 3 }];
  await own.open(file(JSON.stringify({ ...filed, prepare })));
  expect(own.message).toMatchObject({
    kind: 'warning',
    details: [expect.stringContaining('steeringDamper')],
  });
  const opened = own.list[1];
  const lessons = bench.stateOf(Lessons);
  lessons.begin(opened.lesson, opened.asSet);
  const no = { ok: false, reason: 'unknownAdjuster', name: 'steeringDamper' };
  expect(lessons.steps.map(({ tried }) => tried)).toEqual([no, no]);
  while (!lessons.isOver) lessons.forward();
  lessons.leave();
  expect(bench.session.history).toBe(history);
  expect(JSON.parse(saveLesson(opened))).toMatchObject({ prepare });
});

it('a step is tried, while it is edited, on the bike that the lesson makes ready', async () => {
  const { own } = await made();
  const [{ lesson, asSet }] = own.list;
  await own.add({ lesson: { ...lesson, prepare: [{ adjuster: 'forkTubes', to: 11 }] }, asSet });
  expect(own.asSetOf(own.list[1]).setup.forkTubes).toBe(11);
  expect(own.asSetOf(own.list[0]).setup.forkTubes).not.toBe(11);
});

it('what was removed comes back to its place', async () => {
  const { own } = await made();
  await own.make();
  const [first, second] = own.list;
  await own.remove(first);
  expect(own.list).toEqual([second]);
  await own.bringBack();
  expect(own.list).toEqual([first, second]);
});

it('lessons are in the store as they are in the list, and a page opened later finds them, edited and removed ones too', async () => {
  const store = memoryStore(null);
  const { own } = await made(store);
  await own.make();
  await own.make();
  const [first, second] = own.list;
  await own.remove(first);
  own.editedId = second.id;
  await own.change({ ...second.lesson, title: 'Edited' });
  const later = new Workbench(DEMO_BIKES[1]).stateOf(OwnLessons);
  await later.show(store);
  expect(later.list.map(({ lesson }) => lesson.title)).toEqual(['Edited', own.list[1].lesson.title]);
  expect(later.list.map(saveLesson)).toEqual(own.list.map(saveLesson));
  expect(later.list.map(({ id }) => id)).toEqual(own.list.map(({ id }) => id));
});

it('a text of the store that is no lesson is named, and stays there to the last letter', async () => {
  const store = memoryStore(null);
  const newer = '{"format":"sidestance-lesson","schema":9}';
  await store.saveLesson({ id: 'new', madeAt: 1, text: newer });
  const { own } = await made(store);
  expect(own.list).toHaveLength(1);
  expect(own.unreadable).toEqual([
    'The lesson was saved by a newer Sidestance (schema 9); this one reads up to schema 1.',
  ]);
  const kept = await store.lessons();
  expect(kept.ok && kept.value[0]).toEqual({ id: 'new', madeAt: 1, text: newer });
});

it('where the store takes nothing the lesson stays on the page with the reason, and is stored once the store takes it', async () => {
  const store = memoryStore(null);
  let isFull = true;
  const full: BikeStore = {
    ...store,
    saveLesson: async (lesson) => (isFull ? fail(storageFault('full')) : await store.saveLesson(lesson)),
  };
  const { own } = await made(full);
  expect(own.message).toMatchObject({ kind: 'warning', details: [storageFault('full').sentence] });
  await own.show(full);
  expect(own.list).toHaveLength(1);
  isFull = false;
  await own.show(full);
  const kept = await store.lessons();
  expect(kept.ok && kept.value.map(({ text }) => text)).toEqual(own.list.map(saveLesson));
});

it('a change made while the store is read stays', async () => {
  const store = memoryStore(null);
  const { own } = await made(store);
  let change: Promise<void> | null = null;
  const slow: BikeStore = {
    ...store,
    lessons: async () => {
      const before = await store.lessons();
      change ??= own.change({ ...own.list[0].lesson, title: 'Typed meanwhile' });
      await change;
      return before;
    },
  };
  await own.show(slow);
  expect(own.list.map(({ lesson }) => lesson.title)).toEqual(['Typed meanwhile']);
});

it('lessons that a former build kept come into the store once', async () => {
  const { own } = await made();
  const texts = new Map([['sidestance-lessons', JSON.stringify([saveLesson(own.list[0]), 'odd'])]]);
  vi.stubGlobal('localStorage', {
    getItem: (key: string) => texts.get(key) ?? null,
    removeItem: (key: string) => texts.delete(key),
  });
  try {
    const store = memoryStore(null);
    const later = new Workbench(DEMO_BIKES[1]).stateOf(OwnLessons);
    await later.show(store);
    await later.show(store);
    expect(later.list.map(saveLesson)).toEqual([saveLesson(own.list[0])]);
    expect(later.unreadable).toHaveLength(1);
    expect(texts.size).toBe(0);
  } finally {
    vi.unstubAllGlobals();
  }
});
