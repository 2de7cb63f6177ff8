/** A lesson as it runs: predictions before figures, undo of a step, and the page's bike left alone. */
import { expect, it } from 'vitest';
import { DEMO_BIKES } from '../../document/demos/demo-bikes.ts';
import { setAdjuster } from '../../document/edits.ts';
import { LESSONS } from '../../lessons/all-lessons.ts';
import { SAYINGS } from '../../sayings/all-sayings.ts';
import { Lessons } from './lessons.svelte.ts';
import { Workbench } from '../workbench.svelte.ts';

function begun(): { bench: Workbench; lessons: Lessons } {
  const bench = new Workbench(DEMO_BIKES[0]);
  bench.session.commit((from) => setAdjuster(from, 'forkTubes', 7), 'Fork tubes');
  return { bench, lessons: bench.stateOf(Lessons) };
}

it('a lesson run to its end leaves the bike, its undo history and its baseline the very same objects', () => {
  const { bench, lessons } = begun();
  const { history, document } = bench.session;
  for (const lesson of LESSONS) {
    lessons.begin(lesson);
    while (!lessons.isOver) lessons.forward();
    lessons.leave();
  }
  expect(bench.session.history).toBe(history);
  expect(bench.session.document).toBe(document);
  expect(bench.session.canUndo).toBe(true);
});

it('before somebody looks there are no figures: no rows, no words on the drawing, the bike as it was', () => {
  const { lessons } = begun();
  lessons.begin(LESSONS[2]);
  lessons.forward();
  const { now } = lessons;
  if (now === null || !now.tried.ok) throw new Error('the step does not stand');
  expect(lessons.rows).toEqual([]);
  expect(lessons.live?.setup).toBe(now.tried.before.asSet.setup);
  lessons.sideView.resize(900, 500, null);
  const words = (): number =>
    lessons.drawing.scene.flatMap(({ shapes }) => shapes).filter((shape) => shape.kind === 'label').length;
  expect(words()).toBe(0);
  lessons.look();
  expect(lessons.rows.length).toBeGreaterThan(2);
  expect(lessons.live?.setup).toBe(now.tried.after.asSet.setup);
  expect(words()).toBeGreaterThan(0);
});

it('a prediction is kept once somebody looked, and cannot be changed afterwards', () => {
  const { lessons } = begun();
  lessons.begin(LESSONS[2]);
  lessons.forward();
  lessons.predict('less', 0.5);
  lessons.look();
  lessons.predict('more', 2);
  expect(lessons.prediction).toEqual({ way: 'less', amount: 0.5 });
  lessons.back();
  lessons.forward();
  expect(lessons.prediction).toEqual({ way: 'less', amount: 0.5 });
});

it('a clicker goes: goal, step, look, next step; undo hides the step again', () => {
  const { lessons } = begun();
  lessons.begin(LESSONS[0]);
  expect(lessons.at).toBe(-1);
  lessons.forward();
  expect([lessons.at, lessons.isLooked]).toEqual([0, false]);
  lessons.forward();
  expect([lessons.at, lessons.isLooked]).toEqual([0, true]);
  lessons.undo();
  expect([lessons.at, lessons.isLooked, lessons.rows.length]).toEqual([0, false, 0]);
  lessons.forward();
  lessons.forward();
  expect([lessons.at, lessons.isLooked]).toEqual([1, false]);
  lessons.blank = true;
  lessons.forward();
  expect([lessons.at, lessons.blank]).toEqual([1, false]);
});

it('a replay goes from before to after, with bikes between the two', () => {
  const { lessons } = begun();
  lessons.begin(LESSONS[3]);
  lessons.forward();
  lessons.forward();
  const { now } = lessons;
  if (now === null || !now.tried.ok) throw new Error('the step does not stand');
  const tubes = (): number | undefined => lessons.live?.setup.forkTubes;
  expect(lessons.replay(0)).toBe(false);
  expect(tubes()).toBe(now.tried.before.asSet.setup.forkTubes);
  lessons.replay(2000);
  expect(tubes()).toBeCloseTo(11, 6);
  expect(lessons.replay(60_000)).toBe(true);
  expect(tubes()).toBe(now.tried.after.asSet.setup.forkTubes);
});

it('a saying’s trial is shown as a step already looked at', () => {
  const { lessons } = begun();
  const saying = SAYINGS.find(({ key }) => key === 'bigRearSprocket');
  if (saying === undefined) throw new Error('no such saying');
  lessons.showSaying(saying, 1);
  expect([lessons.at, lessons.isLooked]).toEqual([0, true]);
  expect(lessons.now?.figure?.key).toBe('antiSquat');
});

it('at the wall the rear comes up by the figure once somebody looks, with its arrows, and half as hard is on the way', () => {
  const { lessons } = begun();
  const lesson = LESSONS.find(({ key }) => key === 'againstTheWall');
  if (lesson === undefined) throw new Error('no such lesson');
  lessons.begin(lesson);
  lessons.forward();
  const { now } = lessons;
  if (now === null || !now.tried.ok) throw new Error('the step does not stand');
  const { on } = now.tried.before;
  const lift = (): number => on.travel.rear - (lessons.live?.stance.travel.rear ?? Number.NaN);
  const arrows = (): number =>
    lessons.scene
      .flatMap(({ shapes }) => shapes)
      .filter((shape) => 'arrows' in shape && shape.role === 'brakeLine').length;
  expect([lift(), lessons.wall]).toEqual([0, null]);
  lessons.look();
  // Nothing is turned there, so no reading stands beside one from before.
  expect(lessons.rows.length).toBeGreaterThan(2);
  expect(lessons.rows.map(({ before }) => before)).toEqual(lessons.rows.map(() => null));
  const { wall } = lessons;
  if (wall === null) throw new Error('the bike is not at the wall');
  expect(lift()).toBeCloseTo(now.tried.after.value, 9);
  expect(wall.pressed.rear.wheelLoad).toBeGreaterThan(wall.from.rear.wheelLoad);
  expect(arrows()).toBe(2);
  lessons.replay(2000);
  expect(lift() / now.tried.after.value).toBeGreaterThan(0.3);
  expect(lift() / now.tried.after.value).toBeLessThan(0.7);
});

it('a lesson on a bike that has no sprockets leaves those steps out and goes on', () => {
  const [demo] = DEMO_BIKES;
  const shaft = { ...demo, bike: { ...demo.bike, drive: { ...demo.bike.drive, kind: 'shaft' as const } } };
  const lessons = new Workbench(shaft).stateOf(Lessons);
  const lesson = LESSONS.find(({ key }) => key === 'squatLine');
  if (lesson === undefined) throw new Error('no such lesson');
  lessons.begin(lesson);
  lessons.go(1);
  expect(lessons.now?.tried.ok).toBe(false);
  lessons.forward();
  expect(lessons.at).toBe(2);
});

it('every saying has a trial that one press shows: both figures, the bike from before as a shadow, and the construction', () => {
  const { bench, lessons } = begun();
  bench.preferences.change({ lines: false });
  for (const saying of SAYINGS) {
    saying.trials.forEach((trial, index) => {
      expect(trial.turns, trial.name).not.toEqual([]);
      lessons.showSaying(saying, index);
      const { now } = lessons;
      if (now === null || !now.tried.ok) throw new Error(trial.name);
      const { before, after } = now.tried;
      expect(after.asSet.setup, trial.name).not.toEqual(before.asSet.setup);
      expect(lessons.isLooked).toBe(true);
      const roles = lessons.scene.flatMap(({ shapes }) => shapes.map(({ role }) => role));
      expect(roles, trial.name).toContain('squatLine');
      lessons.leave();
    });
  }
});
