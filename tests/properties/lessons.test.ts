/** Every lesson and every saying on every demonstration bike and on random ones: steps stand, answers agree, no text contradicts its figures. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { tryOut, trialFigure, type Trial, type Tried, type Way } from '../../src/core/effects/trial.ts';
import { turned, type AsSet } from '../../src/core/effects/turn.ts';
import { readSign } from '../support/read-sign.ts';
import { wordBySize } from '../../src/core/readings/change-words.ts';
import { READINGS } from '../../src/core/readings/all-readings.ts';
import { metricReading } from '../../src/core/readings/metric-reading.ts';
import { standBike } from '../../src/core/riding/stand-bike.ts';
import { DEMO_BIKES } from '../../src/document/demos/demo-bikes.ts';
import type { LessonCheck, LessonStep } from '../../src/lessons/lesson.ts';
import { LESSONS } from '../../src/lessons/all-lessons.ts';
import { SAYINGS } from '../../src/sayings/all-sayings.ts';
import { checkSaying } from '../../src/sayings/check-saying.ts';
import { figureWords, predictionWords, reasonWords } from '../../src/words/why/trial-words.ts';
import { cases } from '../support/cases.ts';
import { likelyBike } from '../support/random-bikes.ts';

const STYLE = { system: 'metric', decimal: '.' } as const;
const RANDOM_BIKES = 3;

/** Random bikes that stand with a rider, found with the house's seed. */
const random: readonly AsSet[] = fc
  .sample(likelyBike, cases(400))
  .map(({ bike, setup }) => ({
    bike,
    setup: { ...setup, forkSpringRate: 10, forkPreload: 15, shockSpringRate: 110, shockPreload: 12 },
  }))
  .filter(({ bike, setup }) =>
    (['riderUp', 'accelerating', 'braking', 'midCorner', 'toppedOut'] as const).every(
      (state) => standBike(bike, setup, state).ok,
    ),
  )
  .slice(0, RANDOM_BIKES);

const BIKES: readonly (readonly [string, AsSet])[] = [
  ...DEMO_BIKES.map((each) => [each.bike.name, each] as const),
  ...random.map((each, index) => [`random bike ${index + 1}`, each] as const),
];

/** The figure's change worked out beside `tryOut`: turns by hand, both bikes stood, the reading taken. */
function byHand(asSet: AsSet, { from = [], turns, state, figure: key }: Trial): number {
  const reading = READINGS.find((each) => each.key === key);
  if (reading === undefined) throw new Error(`no reading ${key}`);
  const first = turned(asSet, from, state);
  if (!first.ok) throw new Error(first.reason);
  let setup = first.setup;
  for (const turn of turns) {
    const { adjuster } = turn;
    if ('by' in turn) setup = { ...setup, [adjuster]: setup[adjuster] + turn.by };
    else if ('times' in turn) setup = { ...setup, [adjuster]: setup[adjuster] * turn.times };
    else if ('to' in turn) setup = { ...setup, [adjuster]: turn.to };
    else throw new Error('kept readings are held in another test');
  }
  const [before, after] = [first.setup, setup].map((each) => {
    const on = standBike(asSet.bike, each, state);
    const value = on.ok ? metricReading(reading, on) : Number.NaN;
    return typeof value === 'number' ? value : Number.NaN;
  });
  return after - before;
}

const isPlain = (trial: Trial): boolean =>
  READINGS.some(({ key }) => key === trial.figure) && trial.turns.every((turn) => !('keep' in turn));

function expectSaidAsShown(trial: Trial, tried: Tried): void {
  const figure = trialFigure(trial.figure);
  if (figure === null) throw new Error(trial.figure);
  const text = figureWords(figure, tried, STYLE);
  const change = readSign(text, figure.isChange);
  if (tried.way === 'more') expect(change).toBeGreaterThanOrEqual(0);
  if (tried.way === 'less') expect(change).toBeLessThanOrEqual(0);
  const word = tried.way === 'same' ? figure.same : wordBySize(figure, tried.before.value, tried.after.value);
  expect(text.toLowerCase()).toContain(word.toLowerCase());
  for (const way of ['more', 'less', 'same'] as const) {
    const said = predictionWords({ way, amount: null }, figure, tried, STYLE);
    expect(said.startsWith('Right')).toBe(way === tried.way);
  }
}

/** The lesson's reason stands only beside a figure that went the lesson's way. */
function expectReason(step: LessonStep, way: Way): void {
  const { apart, reason } = reasonWords(step, way);
  const isAsTaught = step.point === null || step.point === way;
  expect(reason).toBe(isAsTaught ? step.because : step.otherwise);
  expect(reason).not.toBe('');
  expect(apart === '').toBe(isAsTaught);
  if (!isAsTaught) expect(apart.includes('same')).toBe(way === 'same');
}

it('there are fourteen lessons and fifteen sayings, each with a name of its own', () => {
  expect(LESSONS.length).toBeGreaterThanOrEqual(14);
  expect(SAYINGS.length).toBeGreaterThanOrEqual(15);
  expect(new Set([...LESSONS, ...SAYINGS].map(({ key }) => key)).size).toBe(LESSONS.length + SAYINGS.length);
  expect(random).toHaveLength(RANDOM_BIKES);
});

it('every lesson has its caution, for its pages and its handout', () => {
  for (const { title, caution = '' } of LESSONS) expect(caution.length, title).toBeGreaterThan(40);
});

it('every figure that a lesson or a saying names is there', () => {
  const steps = LESSONS.flatMap(({ steps, check }) => [...steps, check]);
  for (const { figure } of [...steps, ...SAYINGS.flatMap(({ trials }) => trials)])
    expect(trialFigure(figure), figure).not.toBeNull();
  for (const key of LESSONS.flatMap(({ shows }) => shows))
    expect(READINGS.map((reading) => reading.key)).toContain(key);
});

/** A check question ends a lesson, gives no reason and has nothing else to say. */
const isStep = (step: LessonStep | LessonCheck): step is LessonStep => 'because' in step;

describe.each(BIKES)('%s', (name, asSet) => {
  it.each(LESSONS.map((lesson) => [lesson.title, lesson] as const))('%s', (_, lesson) => {
    const made = turned(asSet, lesson.prepare, 'riderUp');
    expect(made.ok).toBe(true);
    if (!made.ok) return;
    const prepared = { bike: asSet.bike, setup: made.setup };
    let stood = 0;
    for (const step of [...lesson.steps, lesson.check]) {
      const tried = tryOut(prepared, step);
      if (!tried.ok) {
        // A demonstration bike takes every step; a random one may refuse, with its reason.
        expect(name, `${step.act} ${tried.reason}`).toContain('random');
        expect(tried.reason).not.toBe('noSuchFigure');
        continue;
      }
      stood++;
      expectSaidAsShown(step, tried);
      if (isStep(step)) expectReason(step, tried.way);
      if (isPlain(step))
        expect(tried.after.value - tried.before.value).toBeCloseTo(byHand(prepared, step), 9);
    }
    // A bike on which nothing of a lesson stands would show nothing.
    expect(stood).toBeGreaterThan(0);
  });

  it.each(SAYINGS.map((saying) => [saying.says, saying] as const))('“%s”', (_, saying) => {
    const { verdict, trials } = checkSaying(asSet, saying);
    for (const { trial, tried, holds } of trials) {
      if (!tried.ok) continue;
      expectSaidAsShown(trial, tried);
      if ('claims' in trial && trial.claims !== 'same') expect(holds).toBe(tried.way === trial.claims);
      if (isPlain(trial) && trial.turns.length > 0)
        expect(tried.after.value - tried.before.value).toBeCloseTo(byHand(asSet, trial), 9);
    }
    const held = trials.flatMap(({ holds }) => (holds === null ? [] : [holds]));
    if (verdict === 'holds') expect(held.every(Boolean)).toBe(true);
    if (verdict === 'doesNot') expect(held.some(Boolean)).toBe(false);
    if (!name.includes('random')) expect(verdict).not.toBe('untested');
  });
});

it('a reading that a turn keeps comes back to where it was', () => {
  for (const { bike, setup } of DEMO_BIKES) {
    const turns = [
      { adjuster: 'shockLength', by: 4 },
      { adjuster: 'forkTubes', keep: 'rake' },
    ] as const;
    const tried = tryOut({ bike, setup }, { turns, state: 'riderUp', figure: 'rake' });
    if (!tried.ok) throw new Error(tried.reason);
    expect(Math.abs(tried.after.value - tried.before.value)).toBeLessThan(1e-3);
    expect(tried.after.asSet.setup.forkTubes).toBeLessThan(setup.forkTubes);
  }
});

it('a turn that cannot be made, and a figure that is not there, are refused with the reason', () => {
  const [{ bike, setup }] = DEMO_BIKES;
  const shaft: AsSet = { bike: { ...bike, drive: { ...bike.drive, kind: 'shaft' } }, setup };
  const teeth = [{ adjuster: 'frontTeeth', by: 1 }] as const;
  expect(tryOut(shaft, { turns: teeth, state: 'riderUp', figure: 'antiSquat' })).toMatchObject({
    ok: false,
    reason: 'adjusterNotThere',
    adjuster: 'frontTeeth',
  });
  expect(tryOut({ bike, setup }, { turns: [], state: 'riderUp', figure: 'luck' })).toEqual({
    ok: false,
    reason: 'noSuchFigure',
  });
  const tooShort = [{ adjuster: 'shockLength', by: -400 }] as const;
  expect(tryOut({ bike, setup }, { turns: tooShort, state: 'riderUp', figure: 'rake' }).ok).toBe(false);
});

describe('the bigger rear sprocket, on every demonstration bike', () => {
  it('the run falls as the saying has it, and the rear is held up more all the same', () => {
    const saying = SAYINGS.find(({ key }) => key === 'bigRearSprocket');
    if (saying === undefined) throw new Error('no such saying');
    for (const asSet of DEMO_BIKES) {
      const { verdict, trials } = checkSaying(asSet, saying);
      expect(verdict).toBe('depends');
      expect(trials.map(({ holds }) => holds)).toEqual([true, false]);
    }
  });
});
