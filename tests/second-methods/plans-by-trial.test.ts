/** Plans against a second way to them: every combination stood in full, sorted, and the first five unlike ones taken. */
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { findPlans, findPlansShared } from '../support/find-plans.ts';
import { READINGS } from '../../src/core/readings/all-readings.ts';
import { metricReading } from '../../src/core/readings/metric-reading.ts';
import { RIDE_STATES } from '../../src/core/riding/states/all-ride-states.ts';
import { standBike } from '../../src/core/riding/stand-bike.ts';
import { QUANTITIES } from '../../src/core/units/all-quantities.ts';
import { cases } from '../support/cases.ts';
import { plansByTrial, type TriedProblem } from '../support/plans-by-trial.ts';
import { likelyBike } from '../support/random-bikes.ts';

/** In working order, each with how far it may be turned from where it stands, and its step. */
const ADJUSTERS = [
  { adjuster: 'rearTeeth', reach: 1, step: 1 },
  { adjuster: 'axlePosition', reach: 4, step: 2 },
  { adjuster: 'shockMountShim', reach: 3, step: 1 },
  { adjuster: 'shockPreload', reach: 4, step: 2 },
  { adjuster: 'shockLength', reach: 5, step: 0.5 },
  { adjuster: 'clampOffset', reach: 2, step: 0.5 },
  { adjuster: 'forkExtenders', reach: 4, step: 1 },
  { adjuster: 'forkPreload', reach: 4, step: 1 },
  { adjuster: 'forkTubes', reach: 6, step: 1 },
] as const;

const RANGES: Readonly<Record<(typeof ADJUSTERS)[number]['adjuster'], readonly [number, number]>> = {
  rearTeeth: [28, 90],
  axlePosition: [0, 20],
  shockMountShim: [0, 20],
  shockPreload: [0, 40],
  shockLength: [-100, 100],
  clampOffset: [10, 60],
  forkExtenders: [0, 30],
  forkPreload: [0, 40],
  forkTubes: [-20, 40],
};

const READ = [
  'swingarmAngle',
  'trail',
  'antiSquat',
  'rake',
  'rearTravel',
  'frontTravel',
  'wheelbase',
] as const;

const asked = fc.record({
  random: likelyBike,
  turned: fc.uniqueArray(fc.constantFrom(...ADJUSTERS), {
    minLength: 1,
    maxLength: 2,
    selector: ({ adjuster }) => adjuster,
  }),
  minutes: fc.array(fc.constantFrom(0, 5, 10, 45), { minLength: 2, maxLength: 2 }),
  goal: fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 2, maxLength: 2 }),
  wanted: fc.array(
    fc.record({
      reading: fc.constantFrom(...READ),
      state: fc.constantFrom(...RIDE_STATES.map(({ key }) => key)),
      /** From what the goal reads, and how far around it, in changes that a rider notices. */
      away: fc.double({ min: -0.6, max: 0.6, noNaN: true }),
      // A wide target leaves room for plans that differ.
      around: fc.oneof(
        fc.double({ min: 0, max: 0.6, noNaN: true }),
        fc.double({ min: 1, max: 4, noNaN: true }),
      ),
      kind: fc.constantFrom('value', 'window', 'atLeast', 'atMost'),
      weight: fc.constantFrom(1, 2),
    }),
    { minLength: 1, maxLength: 3 },
  ),
});

/** A problem near a goal that the bike reaches; null where the bike stands nowhere near it. */
function problemFrom({
  random,
  turned,
  minutes,
  goal,
  wanted,
}: typeof asked extends fc.Arbitrary<infer A> ? A : never): TriedProblem | null {
  const { bike, setup } = random;
  const choices = ADJUSTERS.filter((each) => turned.includes(each)).flatMap(
    ({ adjuster, reach, step }, i) => {
      const [low, high] = RANGES[adjuster];
      const [least, most] = [Math.max(low, setup[adjuster] - reach), Math.min(high, setup[adjuster] + reach)];
      return least < most
        ? [{ adjuster, available: true as const, least, most, step, minutes: minutes[i] }]
        : [];
    },
  );
  const aimed = { ...setup };
  choices.forEach(({ adjuster, least, most }, i) => {
    aimed[adjuster] = adjuster === 'rearTeeth' ? setup.rearTeeth : least + goal[i] * (most - least);
  });
  const targets = wanted.flatMap(({ reading: key, state, away, around, kind, weight }) => {
    const reading = READINGS.find((each) => each.key === key);
    const on = standBike(bike, aimed, state);
    if (reading === undefined || !on.ok) return [];
    const value = metricReading(reading, on);
    if (typeof value !== 'number') return [];
    const { noticed } = QUANTITIES[reading.quantity];
    const [middle, half] = [value + away * noticed, around * noticed];
    const wants = {
      value: { kind: 'value', value: middle, tolerance: half },
      window: { kind: 'window', least: middle - half, most: middle + half },
      atLeast: { kind: 'atLeast', value: middle - half },
      atMost: { kind: 'atMost', value: middle + half },
    } as const;
    return [{ reading: key, state, want: wants[kind], weight }];
  });
  return choices.length === 0 || targets.length === 0 ? null : { bike, setup, targets, choices };
}

const CASES = cases(150, 500);

it('a search gives the same plans, or the same smallest change of one target and of one range, as every combination tried in full', () => {
  const seen = { plans: 0, several: 0, relaxed: 0, wider: 0, none: 0, notAsked: 0 };
  fc.assert(
    fc.property(asked, (drawn) => {
      const problem = problemFrom(drawn);
      const found = problem === null ? null : findPlans(problem);
      // Two windows on one reading contradict each other, and a shock's range may end before the reach.
      if (problem === null || !found?.ok) {
        seen.notAsked++;
        return;
      }
      // Three threads find what one does, to the last count.
      expect(findPlansShared(problem, 3, 5)).toEqual(found);
      const trial = plansByTrial(problem);
      expect(found.tried).toBe(trial.tried);
      expect(found.total).toBe(trial.tried);
      expect(found.plans.map(({ setup }) => setup)).toEqual(trial.plans);
      const { relaxation } = found;
      expect(
        relaxation && { target: relaxation.target, to: relaxation.to, setup: relaxation.plan.setup },
      ).toEqual(trial.relaxation);
      const { wider } = found;
      expect(wider && { adjuster: wider.adjuster, steps: wider.steps, setup: wider.plan.setup }).toEqual(
        trial.wider,
      );
      if (wider !== null) {
        seen.wider++;
        const { least, most } = problem.choices.find(({ adjuster }) => adjuster === wider.adjuster) ?? {};
        expect(wider.by).toBe(Math.max(Number(least) - wider.to, wider.to - Number(most)));
      }
      const { noStand, targets, warnings } = found.stops;
      const stopped = [noStand, ...targets, ...Object.values(warnings)].reduce((sum, each) => sum + each, 0);
      expect(stopped <= found.tried && (found.plans.length === 0) === (stopped === found.tried)).toBe(true);
      if (found.plans.length > 1) seen.several++;
      if (found.plans.length > 0) seen.plans++;
      else if (relaxation !== null) seen.relaxed++;
      else seen.none++;
    }),
    { numRuns: CASES },
  );
  expect(seen.plans).toBeGreaterThan(CASES / 5);
  expect(seen.several).toBeGreaterThan(CASES / 50);
  expect(seen.relaxed).toBeGreaterThan(CASES / 10);
  expect(seen.wider).toBeGreaterThan(CASES / 50);
  expect(seen.none).toBeGreaterThan(CASES / 100);
  expect(seen.notAsked).toBeLessThan(CASES / 3);
}, 600_000);
