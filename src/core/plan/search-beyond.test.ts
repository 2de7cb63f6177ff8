/** Tests of what a search says where no setup within the ranges reaches the targets. */
import { describe, expect, it } from 'vitest';
import { findPlans } from '../../../tests/support/find-plans.ts';
import { SPRUNG_ROAD } from '../../../tests/support/sprung-bikes.ts';
import { judgeFor } from './judge.ts';
import { prepare } from './prepare.ts';
import type { Choice, Problem, Target } from './problem.ts';
import { searchBeyond } from './search-beyond.ts';

const STEEPER: Target = {
  reading: 'swingarmAngle',
  state: 'toppedOut',
  want: { kind: 'value', value: 10.5 },
};
const TEETH: Choice = { adjuster: 'rearTeeth', available: true, least: 43, most: 47 };

describe('where no setup within the ranges reaches the targets', () => {
  const far = (): Problem => ({
    ...SPRUNG_ROAD,
    targets: [STEEPER],
    choices: [
      { adjuster: 'forkTubes', available: true, least: 4, most: 6 },
      { adjuster: 'shockLength', available: true, least: 0, most: 2 },
    ],
  });

  it('one range let out by the fewest steps gives a plan that meets every target', () => {
    const found = findPlans(far());
    if (!found.ok) throw new Error(found.reason);
    expect(found.plans).toEqual([]);
    const { wider, beyond } = found;
    if (wider === null) throw new Error('none');
    expect(beyond.isWhole).toBe(true);
    const limits = { forkTubes: [4, 6], shockLength: [0, 2] }[wider.adjuster as 'forkTubes' | 'shockLength'];
    expect(wider.by).toBeCloseTo(Math.max(limits[0] - wider.to, wider.to - limits[1]), 9);
    expect(wider.plan.setup[wider.adjuster]).toBe(wider.to);
    // The same range one step tighter gives none, and the plan is one that the search finds with the range let out.
    const out = (by: number): Problem => ({
      ...far(),
      choices: far().choices.map((choice) =>
        choice.adjuster === wider.adjuster
          ? { ...choice, least: (choice.least ?? 0) - by, most: (choice.most ?? 0) + by }
          : choice,
      ),
    });
    const step = wider.by / wider.steps;
    const [tighter, open] = [findPlans(out(wider.by - step)), findPlans(out(wider.by))];
    expect(tighter.ok && tighter.plans).toEqual([]);
    expect(open.ok && open.plans[0].setup).toEqual(wider.plan.setup);
  });

  it('names the adjuster that gives a plan by the fewest steps, of those that may not be turned', () => {
    const steps = { shockLength: 0.5, forkExtenders: 1, shockMountShim: 0.5, clampOffset: 0.5 } as const;
    type Other = keyof typeof steps;
    const others = Object.keys(steps) as Other[];
    const around = (adjuster: Other, out: number): Partial<Choice> => {
      const [now, reach] = [SPRUNG_ROAD.setup[adjuster], out * steps[adjuster]];
      const least =
        adjuster === 'forkExtenders' || adjuster === 'shockMountShim'
          ? Math.max(0, now - reach)
          : now - reach;
      return { least, most: now + reach, step: steps[adjuster] };
    };
    // Teeth move no arm with its wheel hanging, so no range of theirs is enough.
    const problem = (allowed: Partial<Record<Other, number>>): Problem => ({
      ...SPRUNG_ROAD,
      targets: [STEEPER],
      choices: [
        TEETH,
        ...others.map((adjuster): Choice => {
          const out = allowed[adjuster];
          return { adjuster, available: out !== undefined, ...around(adjuster, out ?? 20) };
        }),
      ],
    });
    const found = findPlans(problem({}));
    if (!found.ok || found.other === null) throw new Error('none');
    const { other, withOther, wider, beyond } = found;
    expect([wider, beyond.isWhole, withOther.isWhole]).toEqual([null, true, true]);
    const key = other.adjuster as Other;
    expect(other.by).toBeCloseTo(other.steps * steps[key], 9);
    expect(other.to).toBe(other.plan.setup[key]);
    // Allowed by as many steps it gives the plan; none gives one by a step less.
    const open = findPlans(problem({ [key]: other.steps }));
    expect(open.ok && open.plans.map(({ setup }) => setup)).toContainEqual(other.plan.setup);
    expect(other.steps).toBeGreaterThan(1);
    for (const each of others) {
      const tighter = findPlans(problem({ [each]: other.steps - 1 }));
      expect(tighter.ok && tighter.plans).toEqual([]);
    }
    const far = { ...problem({}), targets: [{ ...STEEPER, want: { kind: 'value' as const, value: 60 } }] };
    expect(findPlans(far)).toMatchObject({ other: null, withOther: { isWhole: true } });
  });

  it('says so where an adjuster goes no further, and when it was ended before it knew', () => {
    const impossible = { ...far(), targets: [{ ...STEEPER, want: { kind: 'value' as const, value: 60 } }] };
    const found = findPlans(impossible);
    expect(found).toMatchObject({ wider: null, beyond: { isWhole: true } });
    expect(found.ok && found.beyond.tried).toBeGreaterThan(0);
    const ended = findPlans(impossible, () => false);
    expect(ended).toMatchObject({ wider: null });
  });

  it('ends after as many as may be tried, says that it was cut short, and finds the same as a longer one by then', () => {
    const prepared = prepare(far());
    if (!prepared.ok) throw new Error(prepared.reason);
    const ended = (most: number) => {
      const search = searchBeyond(prepared, judgeFor(prepared), most);
      while (!search.isDone()) search.advance(100);
      return search;
    };
    const whole = ended(Infinity);
    const cut = ended(7);
    expect([cut.tried(), cut.isWhole(), cut.found()]).toEqual([7, false, null]);
    expect([whole.isWhole(), whole.hasFound()]).toEqual([true, true]);
    expect(ended(whole.tried()).found()).toEqual(whole.found());
  });
});
