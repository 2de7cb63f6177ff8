/** Tests of lessons in files: saved and opened as they were, refused with a reason, mended with a list. */
import { describe, expect, it } from 'vitest';
import fc from 'fast-check';
import '../support/cases.ts';
import { tryOut } from '../../src/core/effects/trial.ts';
import { DEMO_BIKES } from '../../src/document/demos/demo-bikes.ts';
import { LESSONS } from '../../src/lessons/all-lessons.ts';
import type { FiledLesson } from '../../src/lessons/lesson-file.ts';
import { openLesson } from '../../src/lessons/open-lesson.ts';
import { saveLesson } from '../../src/lessons/save-lesson.ts';
import { tryStep } from '../../src/lessons/try-step.ts';

const [{ bike, setup }] = DEMO_BIKES;
const filed: FiledLesson = { lesson: { ...LESSONS[2], key: 'filed' }, asSet: { bike, setup } };
const plain = JSON.parse(saveLesson(filed)) as Record<string, unknown>;

function opened(changes: object) {
  const found = openLesson(JSON.stringify({ ...plain, ...changes }));
  if (!found.ok) throw new Error(found.reason.sentence);
  return found.value;
}

function reason(text: string): string {
  const found = openLesson(text);
  return found.ok ? 'opened' : found.reason.sentence;
}

const changed = (changes: object): string => JSON.stringify({ ...plain, ...changes });
const [step] = LESSONS[2].steps;

describe('a lesson in a file', () => {
  it.each(LESSONS.map((lesson) => [lesson.title, lesson] as const))(
    '“%s” is the same after a save, with a bike and without',
    (_, each) => {
      const lesson = { ...each, key: 'filed' };
      for (const asSet of [null, { bike, setup }])
        expect(openLesson(saveLesson({ lesson, asSet }))).toEqual({
          ok: true,
          value: { filed: { lesson, asSet }, repairs: [] },
        });
    },
  );

  it('cut off, of another format, of a newer version, or without its title, steps or question is refused with the reason', () => {
    expect(reason(saveLesson(filed).slice(0, 300))).toBe(
      'The file breaks off before its end; part of it is missing.',
    );
    expect(reason('{}')).toBe('This is not a lesson: it does not say "format": "sidestance-lesson".');
    expect(reason(changed({ schema: 2 }))).toBe(
      'The lesson was saved by a newer Sidestance (schema 2); this one reads up to schema 1.',
    );
    expect(reason(changed({ schema: 'x' }))).toContain('"schema" is "x"');
    expect(reason(changed({ title: '' }))).toContain('(title) is ""');
    expect(reason(changed({ check: 3 }))).toContain('The question at the end (check) is 3');
    expect(reason(changed({ steps: [] }))).toBe('The lesson has no step that can be used.');
    expect(reason(changed({ steps: [{ ...step, point: 'up' }] }))).toContain(
      'Step 1 was left out: steps[0].point is "up"',
    );
    expect(reason(changed({ prepare: [{ adjuster: 'forkTubes', by: 'much' }] }))).toContain('(prepare)');
    expect(reason(changed({ prepare: [{ adjuster: 'luck', by: 'much' }] }))).toContain('(prepare)');
  });

  it('keeps a step whose reading is not there, names it, and the bike refuses it with that reason', () => {
    const { filed: found, repairs } = opened({ steps: [{ ...step, figure: 'grip' }, step] });
    expect(found.lesson.steps).toHaveLength(2);
    expect(repairs.map(({ sentence }) => sentence)).toEqual([
      'Step 1 names the reading “grip”, which this program does not have. It stays in the lesson and is skipped.',
    ]);
    expect(tryOut({ bike, setup }, found.lesson.steps[0])).toEqual({ ok: false, reason: 'noSuchFigure' });
    expect(JSON.parse(saveLesson(found))).toMatchObject({ steps: [{ figure: 'grip' }, {}] });
  });

  it('keeps a step or question whose adjuster or ride state is not there, skips it for that reason, and saves it as it was', () => {
    const unread = { ...step, turns: [{ adjuster: 'steeringDamper', to: 3 }], tempo: 'slow' };
    const flying = { ...step, state: 'flying' };
    const question = { ...LESSONS[2].check, from: [{ adjuster: '__proto__', by: 1 }] };
    const { filed: found, repairs } = opened({ steps: [unread, flying, step], check: question });
    const { steps, check } = found.lesson;
    expect(repairs.map(({ sentence }) => sentence)).toEqual([
      'The question names the adjuster “__proto__”, which this program does not have. It stays in the lesson and is skipped.',
      'Step 1 names the adjuster “steeringDamper”, which this program does not have. It stays in the lesson and is skipped.',
      'Step 2 names the ride state “flying”, which this program does not have. It stays in the lesson and is skipped.',
    ]);
    expect([...steps, check].map((each) => tryStep({ bike, setup }, each))).toMatchObject([
      { ok: false, reason: 'unknownAdjuster', name: 'steeringDamper' },
      { ok: false, reason: 'unknownRideState', name: 'flying' },
      { ok: true },
      { ok: false, reason: 'unknownAdjuster', name: '__proto__' },
    ]);
    const again = JSON.parse(saveLesson(found)) as Record<string, unknown>;
    expect(again).toMatchObject({ steps: [unread, flying, step], check: question });
    const words = { ...found.lesson, steps: [{ ...steps[0], act: 'Turn the damper.' }, steps[2]] };
    expect(JSON.parse(saveLesson({ ...found, lesson: words }))).toMatchObject({
      steps: [{ ...unread, act: 'Turn the damper.' }, step],
    });
  });

  it('opens with a bike made ready by an adjuster that is not there, says so, and saves that as it was', () => {
    const prepare = [
      { adjuster: 'forkTubes', by: 2 },
      { adjuster: 'steeringDamper', to: 3 },
    ];
    const { filed: found, repairs } = opened({ prepare });
    expect(repairs).toEqual([
      {
        path: 'prepare',
        sentence:
          'The lesson makes the bike ready with the adjuster “steeringDamper”, which this program does not have. It stays in the lesson, and its steps are skipped.',
      },
    ]);
    expect(found.lesson.unreadPrepare?.no).toEqual({
      ok: false,
      reason: 'unknownAdjuster',
      name: 'steeringDamper',
    });
    expect(JSON.parse(saveLesson(found))).toEqual({ ...plain, prepare });
  });

  it('leaves out a step with half a tooth, two ways to turn an adjuster, or more than anybody turns, and says which', () => {
    const turned = (turns: object[]) => ({ ...step, turns });
    const { filed: found, repairs } = opened({
      steps: [
        turned([{ adjuster: 'rearTeeth', by: 0.5 }]),
        turned([{ adjuster: 'rearTeeth', times: 2 }]),
        turned([{ adjuster: 'forkTubes', by: 1, to: 2 }]),
        turned([{ adjuster: 'forkTubes', by: 1e300 }]),
        step,
      ],
    });
    expect(found.lesson.steps).toEqual([step]);
    expect(repairs.map(({ sentence }) => sentence.slice(0, 19))).toEqual(
      [1, 2, 3, 4].map((each) => `Step ${each} was left out`),
    );
  });

  it('mends what is wrong beside its steps, and says each', () => {
    const { filed: found, repairs } = opened({
      goal: 7,
      minutes: -1,
      shows: ['rake', 'grip'],
      notes: 'none',
      asSet: { format: 'other' },
      extra: true,
    });
    expect(found).toMatchObject({ lesson: { goal: '', minutes: 10, notes: [] }, asSet: null });
    expect(repairs.map(({ path }) => path)).toEqual(['extra', 'goal', 'minutes', 'notes', 'shows', 'asSet']);
  });

  it('with any figures a file may hold gives a figure or a reason, never NaN', () => {
    const amount = fc.oneof(
      fc.double({ min: -10_000, max: 10_000, noNaN: true }),
      fc.constantFrom(0, -0, 1e-300),
    );
    const way = fc.constantFrom('by', 'to', 'times');
    const adjuster = fc.constantFrom(
      'forkTubes',
      'shockLength',
      'shockSpringRate',
      'clampOffset',
      'riderMass',
    );
    fc.assert(
      fc.property(adjuster, way, amount, (key, how, value) => {
        const { filed: found } = opened({ steps: [{ ...step, turns: [{ adjuster: key, [how]: value }] }] });
        const tried = tryOut({ bike, setup }, found.lesson.steps[0]);
        if (tried.ok) expect(Number.isFinite(tried.after.value)).toBe(true);
        else expect(tried.reason).not.toBe('');
      }),
    );
  });
});
