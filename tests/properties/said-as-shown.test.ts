/** Over random bikes and changes: one figure in all places that show it, shares that add up, and verdicts that the balance agrees with. */
import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { Bike } from '../../src/core/parts/bike.ts';
import type { Setup } from '../../src/core/adjusters/setup.ts';
import { CHAIN } from '../../src/core/parts/drive-noun.ts';
import { EXPLAINED, splitByAdjuster, type ExplainedKey } from '../../src/core/effects/split-by-adjuster.ts';
import { rideFigures } from '../../src/core/effects/ride-table.ts';
import { why } from '../../src/core/effects/why.ts';
import { changeWord } from '../../src/core/readings/change-words.ts';
import { metricReading } from '../../src/core/readings/metric-reading.ts';
import type { Reading } from '../../src/core/readings/reading.ts';
import { balance } from '../../src/core/riding/equilibrium/equilibrium.ts';
import { standBike, type StandingBike } from '../../src/core/riding/stand-bike.ts';
import {
  shownDifference,
  writeChange,
  writeNumber,
  type NumberStyle,
} from '../../src/core/units/number-style.ts';
import { walk } from '../../src/core/effects/walk.ts';
import { beforeTheWork } from '../../src/words/kept/paper-words.ts';
import { curveSet } from '../../src/curves/curve-set.ts';
import { CURVE_AXES, nameAxis } from '../../src/curves/curve-axes.ts';
import { zoneSentence } from '../../src/scene/construction/zone-sentence.ts';
import { courseWords } from '../../src/words/kept/curve-words.ts';
import { differenceOf } from '../../src/words/change/difference-text.ts';
import { RIDE_COLUMNS } from '../../src/words/ride/ride-columns.ts';
import { whyStory } from '../../src/words/why/why-words.ts';
import { cases } from '../support/cases.ts';
import { likelyBike } from '../support/random-bikes.ts';
import { sprungSetup } from '../support/linked-bike.ts';

const RUNS = cases(1000);
/** How long the whole may take on a slow machine, ms. */
const PATIENCE_MS = cases(120_000);

/** What a figure of one digit does not show, mm. */
const NOTHING = 0.05;

const STYLES: readonly NumberStyle[] = [
  { system: 'metric', decimal: '.' },
  { system: 'inch', decimal: '.' },
];
const STATES = ['riderUp', 'accelerating', 'braking', 'toppedOut'] as const;
type State = (typeof STATES)[number];

const tenth = (least: number, most: number) =>
  fc.integer({ min: 10 * least, max: 10 * most }).map((tenths) => tenths / 10);

const changes = fc.record(
  {
    shockLength: fc.oneof(tenth(-8, 12), tenth(-1, 1)),
    forkTubes: fc.oneof(tenth(0, 20), tenth(4, 6)),
    frontTeeth: fc.integer({ min: 14, max: 17 }),
    rearTeeth: fc.integer({ min: 38, max: 50 }),
    axlePosition: tenth(0, 20),
    forkSpringRate: tenth(8, 12),
    shockSpringRate: tenth(80, 120),
    riderMass: tenth(50, 110),
  },
  { requiredKeys: [] },
);

/** Springs that carry the drawn bike, each of its own stiffness, and gas enough to move it. */
const springs = fc.record({
  forkSpringRate: tenth(8, 12),
  shockSpringRate: tenth(80, 140),
  forkPreload: tenth(5, 20),
  shockPreload: tenth(5, 15),
  acceleration: tenth(0.2, 0.8),
});

interface Changed {
  readonly bike: Bike;
  readonly from: Setup;
  readonly to: Setup;
  readonly state: State;
  readonly style: NumberStyle;
}

const changed: fc.Arbitrary<Changed> = fc
  .record({
    drawn: likelyBike,
    springs,
    turned: changes,
    state: fc.constantFrom(...STATES),
    style: fc.constantFrom(...STYLES),
  })
  .map(({ drawn, springs: fitted, turned, state, style }) => {
    const from: Setup = { ...sprungSetup, ...drawn.setup, ...fitted };
    return { bike: drawn.bike, from, to: { ...from, ...turned }, state, style };
  });

function stand(bike: Bike, setup: Setup, state: State): StandingBike | null {
  const found = standBike(bike, setup, state);
  return found.ok ? found : null;
}

/** The figures of a text with their signs. */
function figures(text: string): number[] {
  return [...text.matchAll(/[+−]?\d+(?:\.\d+)?/g)].map(([figure]) => Number(figure.replace('−', '-')));
}

function written(reading: Reading, on: StandingBike, style: NumberStyle): string | null {
  const value = metricReading(reading, on);
  return typeof value === 'number' ? writeNumber(value, reading.quantity, style).text : null;
}

/**
 * By how much the readings on the workshop's page change with each step of the work, and before it with the load; only
 * what is written. Null where several parts belong into one step.
 */
function stepsOnPaper(reading: Reading, { bike, from, to, state, style }: Changed): number[] | null {
  const start = beforeTheWork(from, to);
  const steps = walk(start, to, (asked) => stand(bike, asked, state));
  const along = [stand(bike, from, state), stand(bike, start, state), ...steps.map(({ on }) => on)];
  if (steps.some(({ turned }) => turned.length > 1)) return null;
  const figures = along.map((on) => (on === null ? null : metricReading(reading, on)));
  if (!figures.every((figure) => typeof figure === 'number')) return null;
  return figures
    .slice(1)
    .map((figure, i) => shownDifference(figures[i], figure, reading.quantity, style))
    .map((change) => Number(writeChange(change, reading.quantity, style).digits.replace('−', '-')))
    .filter((change) => change !== 0);
}

const rounded = (shares: readonly number[]): string[] => shares.map((share) => share.toFixed(3)).sort();

it(
  'Why has the change that the readings show, a direction that agrees with it, and shares that add up to it and are the steps of the workshop’s page',
  () => {
    let bikes = 0;
    let told = 0;
    let paper = 0;
    fc.assert(
      fc.property(changed, ({ bike, from, to, state, style }) => {
        const [before, after] = [stand(bike, from, state), stand(bike, to, state)];
        if (before === null || after === null) return;
        bikes++;
        const splits = splitByAdjuster(
          { bike, setup: from, stance: before },
          { bike, setup: to, stance: after },
          (asSet) => stand(asSet.bike, asSet.setup, state),
        );
        for (const { reading, text } of whyStory(splits, why(before, after), CHAIN, style).sentences) {
          const explained = EXPLAINED[reading as ExplainedKey];
          const [a, b] = [metricReading(explained, before), metricReading(explained, after)];
          if (typeof a !== 'number' || typeof b !== 'number') throw new Error(`no figures for ${text}`);
          const { amount, direction } = differenceOf(b, a, explained.quantity, style);
          expect(text.startsWith(`${explained.label} ${amount}, `), `${text}: ${amount}`).toBe(true);
          const [change, ...shares] = figures(text.slice(explained.label.length));
          expect(Math.sign(change), text).toBe(direction === 'more' ? 1 : -1);
          if (!text.includes('all from') && shares.length > 0) {
            expect(
              shares.reduce((all, share) => all + share, 0),
              text,
            ).toBeCloseTo(change, 9);
            const onPaper = stepsOnPaper(explained, { bike, from, to, state, style });
            if (onPaper !== null) {
              expect(rounded(shares), text).toEqual(rounded(onPaper));
              paper++;
            }
          }
          told++;
        }
      }),
      { numRuns: RUNS, endOnFailure: true },
    );
    expect(bikes).toBeGreaterThan(RUNS / 2);
    expect(told).toBeGreaterThan(RUNS);
    expect(paper).toBeGreaterThan(RUNS / 2);
  },
  PATIENCE_MS,
);

it(
  'the table of ride states and the curves show the figure that the readings show, and the same word for its change',
  () => {
    const axis = CURVE_AXES.find(({ key }) => key === 'rearTravel');
    if (axis === undefined) throw new Error('no axis of rear travel');
    let held = 0;
    fc.assert(
      fc.property(changed, ({ bike, from, to, state, style }) => {
        const [before, after] = [stand(bike, from, state), stand(bike, to, state)];
        if (before === null || after === null) return;
        for (const key of ['rake', 'trail', 'antiSquat'] as const) {
          const reading = EXPLAINED[key];
          const shown = written(reading, after, style);
          const column = RIDE_COLUMNS.find((each) => each.key === key);
          if (column === undefined) throw new Error(`no column ${key}`);
          const value = column.value(rideFigures(after));
          expect(value === null ? null : writeNumber(value, column.quantity, style).text, key).toBe(shown);
          const source = {
            name: 'Now',
            of: 'now',
            slot: null,
            bike,
            setup: to,
            state,
            stance: after,
          } as const;
          const set = curveSet(reading, nameAxis(axis, bike.drive.kind), [source]);
          if (shown !== null) expect(courseWords(set, style)).toContain(`Now ${shown} at `);
          const [a, b] = [metricReading(reading, before), metricReading(reading, after)];
          if (typeof a !== 'number' || typeof b !== 'number') continue;
          const change = differenceOf(b, a, reading.quantity, style);
          if (change.direction === 'same') continue;
          // Of a rake the column calls the smaller figure steeper, as the reading does.
          const words = [changeWord(column, a, b), changeWord(reading, a, b)];
          expect(words.every((word) => word.length > 0)).toBe(true);
          if (a > 0 && b > 0)
            expect(words).toEqual(
              change.direction === 'more' ? [column.more, reading.more] : [column.less, reading.less],
            );
          held++;
        }
      }),
      { numRuns: RUNS, endOnFailure: true },
    );
    expect(held).toBeGreaterThan(RUNS);
  },
  PATIENCE_MS,
);

it(
  'what the side view says of the rear on the gas is what the balance does, in mm',
  () => {
    const counts = { squats: 0, lifts: 0, stays: 0, twoRests: 0 };
    fc.assert(
      fc.property(changed, ({ bike, to }) => {
        const on = stand(bike, to, 'accelerating');
        if (on?.equilibrium === undefined || on.sprung === undefined) return;
        const { forces } = on.equilibrium;
        const steady = balance(on.sprung, { ...forces, acceleration: 0 });
        if (!steady.ok || !(forces.acceleration > 0)) return;
        // A bike that can rest in two postures may be found in either.
        const near = balance(on.sprung, steady.forces, on.travel);
        if (!near.ok || Math.abs(near.stance.travel.rear - steady.stance.travel.rear) > 1e-6) {
          counts.twoRests++;
          return;
        }
        const squat = on.travel.rear - steady.stance.travel.rear;
        // Two balances sought from different travels differ in the last digits.
        if (Math.abs(Math.abs(squat) - NOTHING) < 1e-6) return;
        const said = zoneSentence(on, 5);
        const verb = squat > 0 ? 'squats' : 'lifts';
        if (Math.abs(squat) < NOTHING) {
          expect(said).toContain('The rear stays where it is on the gas.');
          counts.stays++;
        } else {
          expect(said).toContain(`The rear ${verb} on the gas.`);
          counts[verb]++;
        }
      }),
      { numRuns: RUNS, endOnFailure: true },
    );
    expect(counts.twoRests).toBeLessThan(RUNS / 20);
    expect(counts.squats).toBeGreaterThan(RUNS / 20);
    expect(counts.lifts).toBeGreaterThan(RUNS / 20);
  },
  PATIENCE_MS,
);
