/** Tests of a lesson made from how a bike stands. */
import { describe, expect, it } from 'vitest';
import { tryOut } from '../../src/core/effects/trial.ts';
import { DEMO_BIKES } from '../../src/document/demos/demo-bikes.ts';
import { makeLesson } from '../../src/lessons/make-lesson.ts';
import { openLesson } from '../../src/lessons/open-lesson.ts';
import { saveLesson } from '../../src/lessons/save-lesson.ts';

const STYLE = { system: 'metric', decimal: '.' } as const;

describe.each(DEMO_BIKES.map((each) => [each.bike.name, each] as const))('%s', (_, { bike, setup }) => {
  const now = {
    bike,
    setup: { ...setup, shockLength: setup.shockLength + 4, forkTubes: setup.forkTubes + 2 },
  };
  const made = makeLesson({ now, baseline: setup, state: 'riderUp' }, STYLE);

  it('starts from the baseline, and its step brings the bike to how it stands now', () => {
    const { asSet, lesson } = made;
    if (asSet === null) throw new Error('the lesson has no bike');
    const [step] = lesson.steps;
    const tried = tryOut(asSet, step);
    if (!tried.ok) throw new Error(tried.reason);
    expect(asSet.setup.shockLength).toBe(setup.shockLength);
    expect(tried.after.asSet.setup.shockLength).toBe(now.setup.shockLength);
    expect(tried.after.asSet.setup.forkTubes).toBe(now.setup.forkTubes);
    expect(step.point).toBe(tried.way);
    expect(tried.way).not.toBe('same');
    expect(step.act).toContain('Shock length');
  });

  it('is the same once saved and opened', () => {
    const lesson = { ...made.lesson, key: 'filed' };
    expect(openLesson(saveLesson(made))).toEqual({
      ok: true,
      value: { filed: { ...made, lesson }, repairs: [] },
    });
  });
});

it('a bike that stands as its baseline gives a step without turns, to be filled in', () => {
  const [{ bike, setup }] = DEMO_BIKES;
  const { lesson } = makeLesson({ now: { bike, setup }, baseline: setup, state: 'riderUp' }, STYLE);
  expect(lesson.steps).toHaveLength(1);
  expect(lesson.steps[0]).toMatchObject({ turns: [], figure: 'trail', point: 'same' });
});
