/** Tests of the search for setups that reach targets. */
import { describe, expect, it } from 'vitest';
import { SPRUNG_ROAD } from '../../../tests/support/sprung-bikes.ts';
import { withFork } from '../../../tests/support/plain-bike.ts';
import { trail } from '../readings/trail.ts';
import { standBike } from '../riding/stand-bike.ts';
import { findPlans } from '../../../tests/support/find-plans.ts';
import type { Choice, Problem, Target } from './problem.ts';

const STEEPER: Target = {
  reading: 'swingarmAngle',
  state: 'toppedOut',
  want: { kind: 'value', value: 10.5 },
};
const KEEP_TRAIL: Target = { reading: 'trail', state: 'riderUp', want: { kind: 'keep' } };
const SHOCK: Choice = { adjuster: 'shockLength', available: true, least: 0, most: 9 };
const TUBES: Choice = { adjuster: 'forkTubes', available: true, least: 0, most: 10 };
const CLAMPS: Choice = { adjuster: 'clampOffset', available: true, least: 26, most: 34 };
const TEETH: Choice = { adjuster: 'rearTeeth', available: true, least: 43, most: 47 };

const asked = (change: Partial<Problem> = {}): Problem => ({
  ...SPRUNG_ROAD,
  targets: [STEEPER, KEEP_TRAIL],
  choices: [TUBES, CLAMPS, SHOCK],
  ...change,
});

const refusal = (change: Partial<Problem>) => {
  const found = findPlans(asked(change));
  return found.ok ? null : found;
};

describe('a plan', () => {
  it('turns the rear first, the fork tubes last, and says the readings after each step', () => {
    const found = findPlans(
      asked({
        choices: [TUBES, TEETH, SHOCK],
        targets: [
          {
            reading: 'finalDriveRatio',
            state: 'riderUp',
            want: { kind: 'window', least: 47 / 15, most: 47 / 15 },
          },
          { reading: 'swingarmAngle', state: 'toppedOut', want: { kind: 'window', least: 10.4, most: 10.6 } },
          { reading: 'trail', state: 'riderUp', want: { kind: 'keep', tolerance: 4 } },
        ],
      }),
    );
    if (!found.ok) throw new Error(found.reason);
    const turned = found.plans.map(({ steps }) =>
      steps.flatMap(({ turns }) => turns.map((turn) => turn.adjuster)),
    );
    expect(turned.some((keys) => keys.length === 3)).toBe(true);
    for (const keys of turned)
      expect(keys).toEqual(
        ['rearTeeth', 'shockLength', 'forkTubes'].filter((key) => keys.some((each) => each === key)),
      );
    for (const { steps } of found.plans) {
      let setup = SPRUNG_ROAD.setup;
      for (const { turns, readings } of steps) {
        for (const { adjuster, from, to } of turns) {
          expect(setup[adjuster]).toBe(from);
          setup = { ...setup, [adjuster]: to };
        }
        const on = standBike(SPRUNG_ROAD.bike, setup, 'riderUp');
        if (!on.ok) throw new Error(on.reason);
        expect(readings[2]).toBe(trail.read(on));
      }
    }
  });

  it('turns sprocket and chain in one step where the bike does not stand in between', () => {
    const setup = { ...SPRUNG_ROAD.setup, chainLinks: 114 };
    const found = findPlans({
      bike: SPRUNG_ROAD.bike,
      setup,
      targets: [
        {
          reading: 'finalDriveRatio',
          state: 'toppedOut',
          want: { kind: 'window', least: 52 / 15, most: 52 / 15 },
        },
      ],
      choices: [
        { adjuster: 'rearTeeth', available: true, least: 45, most: 52 },
        { adjuster: 'chainLinks', available: true },
      ],
    });
    if (!found.ok) throw new Error(found.reason);
    expect(standBike(SPRUNG_ROAD.bike, setup, 'toppedOut').ok).toBe(true);
    expect(found.plans[0].steps.map(({ turns }) => turns.map(({ adjuster }) => adjuster))).toEqual([
      ['rearTeeth', 'chainLinks'],
    ]);
  });

  it('leaves an adjuster alone where it stands between two steps, to the last digit', () => {
    const { setup } = SPRUNG_ROAD;
    const odd = { ...setup, forkPreload: 7.384615384615385 };
    const PRELOAD: Choice = { adjuster: 'forkPreload', available: true, least: 0, most: 15 };
    const found = findPlans(asked({ setup: odd, choices: [PRELOAD, SHOCK], targets: [KEEP_TRAIL] }));
    if (!found.ok) throw new Error(found.reason);
    expect(found.plans[0].steps).toEqual([]);
    for (const { steps } of found.plans)
      for (const { turns } of steps)
        for (const { from, to } of turns) expect(Math.abs(Number(to) - Number(from))).toBeGreaterThan(0.1);
  });

  it('is empty where the bike meets its targets as it is set', () => {
    const found = findPlans(asked({ targets: [KEEP_TRAIL] }));
    if (!found.ok) throw new Error(found.reason);
    expect(found.plans[0]).toMatchObject({ steps: [], minutes: 0, off: 0, setup: SPRUNG_ROAD.setup });
  });

  it('prefers what weighs more, and what is less work', () => {
    const plan = (targets: readonly Target[], minutes: number) => {
      const found = findPlans(asked({ targets, choices: [{ ...CLAMPS, minutes }, SHOCK, TUBES] }));
      if (!found.ok) throw new Error(found.reason);
      return found.plans[0];
    };
    const loose: readonly Target[] = [
      { ...STEEPER, want: { kind: 'value', value: 10.5, tolerance: 0.3 } },
      { ...KEEP_TRAIL, want: { kind: 'keep', tolerance: 6 } },
    ];
    const [angle, kept] = loose;
    const trailOff = ({ readings }: ReturnType<typeof plan>): number => {
      const on = standBike(SPRUNG_ROAD.bike, SPRUNG_ROAD.setup, 'riderUp');
      return on.ok ? Math.abs(Number(readings[1]) - Number(trail.read(on))) : NaN;
    };
    expect(trailOff(plan([angle, { ...kept, weight: 10 }], 60))).toBeLessThan(
      trailOff(plan([angle, kept], 600)),
    );
    expect(
      plan(loose, 600)
        .steps.flatMap(({ turns }) => turns)
        .some(({ adjuster }) => adjuster === 'clampOffset'),
    ).toBe(false);
  });

  it('never raises a warning: fork tubes stay in the clamps as the maker says', () => {
    const targets: Target[] = [
      { reading: 'rake', state: 'toppedOut', want: { kind: 'window', least: 0, most: 60 } },
    ];
    const choices = [{ ...TUBES, least: -10 }];
    const bike = withFork(SPRUNG_ROAD.bike, { leastHeight: 3 });
    const found = findPlans({ ...SPRUNG_ROAD, bike, targets, choices });
    if (!found.ok) throw new Error(found.reason);
    for (const { setup } of found.plans) expect(setup.forkTubes).toBeGreaterThanOrEqual(3);
    expect(found.stops.warnings.tubeTooShort).toBe(3);
    expect(found.stops.warnings.tubeOutOfClamp).toBe(10);
  });
});

describe('tyres', () => {
  const rake = (setup: Problem['setup']): number => {
    const on = standBike(SPRUNG_ROAD.bike, setup, 'toppedOut');
    return on.ok ? (on.rake * 180) / Math.PI : NaN;
  };

  it('are fitted by their sizes, those that the rim takes where none are named, and a step is the next size', () => {
    const target: Target = {
      reading: 'rake',
      state: 'toppedOut',
      want: { kind: 'window', least: 0, most: 60 },
    };
    const tyres = [{ code: '160/60-17' }, { code: '200/60-17' }];
    for (const choice of [{ tyres }, {}]) {
      const found = findPlans(
        asked({ targets: [target], choices: [{ adjuster: 'rearTyre', available: true, ...choice }] }),
      );
      if (!found.ok) throw new Error(found.reason);
      expect(found.total).toBe('tyres' in choice ? 3 : 6);
      expect(found.plans[0].steps).toEqual([]);
    }
    const aimed = { ...SPRUNG_ROAD.setup, rearTyre: { code: '160/60-17' } };
    const found = findPlans(
      asked({
        targets: [{ ...target, want: { kind: 'value', value: rake(aimed), tolerance: 0.01 } }],
        choices: [{ adjuster: 'rearTyre', available: true, tyres, minutes: 20 }, TUBES],
      }),
    );
    if (!found.ok) throw new Error(found.reason);
    const tyred = found.plans.find(({ setup }) => setup.rearTyre !== SPRUNG_ROAD.setup.rearTyre);
    expect(tyred?.setup).toEqual(aimed);
    expect(tyred?.steps.map(({ turns }) => turns)).toEqual([
      [{ adjuster: 'rearTyre', from: SPRUNG_ROAD.setup.rearTyre, to: { code: '160/60-17' }, minutes: 20 }],
    ]);
  });
});

describe('a target open on one side', () => {
  it('is met from its figure on, and by the bike as it is where the figure is left out', () => {
    const kept = findPlans(asked({ targets: [{ ...KEEP_TRAIL, want: { kind: 'atLeast' } }] }));
    if (!kept.ok) throw new Error(kept.reason);
    expect(kept.plans[0].steps).toEqual([]);
    const on = standBike(SPRUNG_ROAD.bike, SPRUNG_ROAD.setup, 'riderUp');
    if (!on.ok) throw new Error(on.reason);
    const now = Number(trail.read(on));
    const more = findPlans(
      asked({ targets: [{ ...KEEP_TRAIL, want: { kind: 'atLeast', value: now + 3 } }] }),
    );
    if (!more.ok) throw new Error(more.reason);
    expect(more.plans.length).toBeGreaterThan(0);
    for (const { readings, off } of more.plans) {
      expect(readings[0]).toBeGreaterThanOrEqual(now + 3 - 1e-9);
      expect(off).toBe(0);
    }
    expect(
      refusal({
        targets: [
          { ...KEEP_TRAIL, want: { kind: 'atLeast', value: 100 } },
          { ...KEEP_TRAIL, want: { kind: 'atMost', value: 99 } },
        ],
      }),
    ).toMatchObject({ reason: 'targetsContradict', target: 1, other: 0 });
  });
});

describe('a search', () => {
  it('reports how far it has come, and keeps what it found when it is ended', () => {
    const all = findPlans(asked());
    if (!all.ok) throw new Error(all.reason);
    const heard: number[] = [];
    const ended = findPlans(asked(), ({ tried, total, best }) => {
      heard.push(tried);
      expect(total).toBe(all.total);
      return best() === null;
    });
    if (!ended.ok) throw new Error(ended.reason);
    expect(ended.tried).toBe(heard[heard.length - 1]);
    expect(ended.tried).toBeLessThan(all.total);
    expect(ended.plans.length).toBeGreaterThan(0);
  });

  it('tries every combination and counts what stopped each', () => {
    const found = findPlans(
      asked({ targets: [{ ...STEEPER, want: { kind: 'value', value: 30 } }, KEEP_TRAIL] }),
    );
    if (!found.ok) throw new Error(found.reason);
    expect([found.tried, found.total, found.plans.length]).toEqual([13 * 11 * 17, 13 * 11 * 17, 0]);
    expect(found.stops.targets).toEqual([found.total, 0]);
    expect(found.relaxation?.target).toBe(0);
    expect(found.relaxation?.plan.setup.shockLength).toBe(9);
  });
});

describe('nothing to search, with the reason', () => {
  it.each<[string, Partial<Problem>, object]>([
    ['no target', { targets: [] }, { reason: 'noTargets' }],
    [
      'an unknown reading',
      { targets: [{ ...STEEPER, reading: 'x' }] },
      { reason: 'readingUnknown', target: 0 },
    ],
    [
      'a window that is reversed',
      { targets: [KEEP_TRAIL, { ...STEEPER, want: { kind: 'window', least: 3, most: 2 } }] },
      { reason: 'windowReversed', target: 1, found: 3, limit: 2 },
    ],
    [
      'targets that contradict each other',
      { targets: [STEEPER, KEEP_TRAIL, { ...STEEPER, want: { kind: 'value', value: 12 } }] },
      { reason: 'targetsContradict', target: 2, other: 0 },
    ],
    [
      'a tolerance below zero',
      { targets: [{ ...STEEPER, want: { kind: 'value', value: 12, tolerance: -1 } }] },
      { reason: 'toleranceNegative' },
    ],
    ['a weight of nothing', { targets: [{ ...STEEPER, weight: 0 }] }, { reason: 'weightNotPositive' }],
    [
      'a target that is no number',
      { targets: [{ ...STEEPER, want: { kind: 'value', value: NaN } }] },
      { reason: 'inputNotANumber', target: 0 },
    ],
    [
      'nothing to keep',
      { setup: { ...SPRUNG_ROAD.setup, forkSpringRate: 0 } },
      { reason: 'nothingToKeep', target: 1, noStand: { reason: 'rateNotAboveZero' } },
    ],
    ['nothing available', { choices: [{ ...SHOCK, available: false }] }, { reason: 'nothingAvailable' }],
    ['an adjuster twice', { choices: [SHOCK, SHOCK] }, { reason: 'adjusterTwice', adjuster: 'shockLength' }],
    ['a load', { choices: [{ adjuster: 'riderMass', available: true }] }, { reason: 'notAPart' }],
    [
      'a part the bike lacks',
      { choices: [{ adjuster: 'pivotUp', available: true }] },
      { reason: 'notOnThisBike' },
    ],
    [
      'no tyre beside the fitted one',
      {
        setup: { ...SPRUNG_ROAD.setup, rearTyre: { diameter: 640 } },
        choices: [{ adjuster: 'rearTyre', available: true }],
      },
      { reason: 'noOtherTyre' },
    ],
    [
      'a tyre that cannot be read',
      { choices: [{ adjuster: 'rearTyre', available: true, tyres: [{ code: '19/55' }] }] },
      { reason: 'tyreImpossible' },
    ],
    [
      'an axle that its chain places',
      {
        setup: { ...SPRUNG_ROAD.setup, chainLinks: 114 },
        choices: [{ adjuster: 'axlePosition', available: true }],
      },
      { reason: 'placedByChain' },
    ],
    ['a step of zero', { choices: [{ ...SHOCK, step: 0 }] }, { reason: 'stepNotPositive' }],
    ['half a tooth', { choices: [{ ...TEETH, step: 0.5 }] }, { reason: 'stepNotWhole' }],
    ['minutes below zero', { choices: [{ ...SHOCK, minutes: -1 }] }, { reason: 'minutesNegative' }],
    ['a range that is reversed', { choices: [{ ...SHOCK, least: 9, most: 1 }] }, { reason: 'rangeReversed' }],
    [
      'a range beyond the adjuster',
      { choices: [{ ...TUBES, most: 90 }] },
      { reason: 'rangeTooWide', least: -20, most: 40 },
    ],
    ['no step in the range', { choices: [{ ...TUBES, least: 5.2, most: 5.8 }] }, { reason: 'noStepInRange' }],
  ])('%s', (_, change, expected) => {
    expect(refusal(change)).toMatchObject({ ok: false, ...expected });
  });

  it('too many combinations, with the adjuster to hold: the one that moves the targets least', () => {
    const many = ['shockLength', 'forkTubes', 'forkExtenders', 'chainSlack'] as const;
    const choices = many.map((adjuster): Choice => ({ adjuster, available: true }));
    expect(refusal({ choices })).toMatchObject({ reason: 'tooMany', adjuster: 'chainSlack', limit: 1e6 });
    const billion = [...many, 'clampOffset'] as const;
    const found = refusal({ choices: billion.map((adjuster) => ({ adjuster, available: true })) });
    expect(found?.reason).toBe('tooMany');
    expect(found?.found).toBeGreaterThan(1e9);
  });
});
