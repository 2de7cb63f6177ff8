/** Every sentence with a figure has the figure that the readings show, and a direction word that agrees with its sign. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cases } from '../../tests/support/cases.ts';
import { plainBike, plainSetup } from '../../tests/support/plain-bike.ts';
import { linkedBike, sprungSetup } from '../../tests/support/linked-bike.ts';
import type { Bike } from '../core/parts/bike.ts';
import type { Setup } from '../core/adjusters/setup.ts';
import { CHAIN } from '../core/parts/drive-noun.ts';
import { EXPLAINED, splitByAdjuster, type ExplainedKey } from '../core/effects/split-by-adjuster.ts';
import { why } from '../core/effects/why.ts';
import { READINGS } from '../core/readings/all-readings.ts';
import type { Reading } from '../core/readings/reading.ts';
import { riderEffects } from '../core/riding/rider-effects.ts';
import { standBike, type StandingBike } from '../core/riding/stand-bike.ts';
import { sprungMachine } from '../core/springs/sprung-machine.ts';
import { machine } from '../core/standing/machine.ts';
import { QUANTITIES } from '../core/units/all-quantities.ts';
import { writeNumber, type NumberStyle } from '../core/units/number-style.ts';
import { differenceOf } from './change/difference-text.ts';
import { readOut } from './why/read-out.ts';
import { mechanismStory } from './why/why-mechanism.ts';
import { whyStory } from './why/why-words.ts';
import { riderEffectsTold } from './ride/rider-effect-words.ts';

const STYLES: readonly NumberStyle[] = [
  { system: 'metric', decimal: '.' },
  { system: 'inch', decimal: '.' },
];

const tenth = (least: number, most: number) =>
  fc.integer({ min: 10 * least, max: 10 * most }).map((tenths) => tenths / 10);

/** Small steps too, so that changes about the last digit come often. */
const changes = fc.record(
  {
    shockLength: fc.oneof(tenth(-8, 12), tenth(-1, 1)),
    forkTubes: fc.oneof(tenth(0, 20), tenth(4, 6)),
    clampOffset: tenth(25, 40),
    frontTeeth: fc.integer({ min: 14, max: 17 }),
    rearTeeth: fc.integer({ min: 40, max: 50 }),
    axlePosition: tenth(0, 20),
    shockMountShim: tenth(0, 4),
    forkSpringRate: tenth(8, 11),
    shockSpringRate: tenth(80, 110),
    riderMass: tenth(50, 110),
  },
  { requiredKeys: [] },
);

const bikes = fc.constantFrom(
  { bike: plainBike, setup: plainSetup, state: 'toppedOut' as const },
  { bike: linkedBike, setup: sprungSetup, state: 'riderUp' as const },
  { bike: linkedBike, setup: sprungSetup, state: 'accelerating' as const },
);

/** What a sentence says of a reading that grew and of one that shrank. */
const WORDS: Readonly<Record<ExplainedKey, readonly [more: string, less: string]>> = {
  rake: ['slacker axis', 'steeper axis'],
  trail: ['(slightly steadier|steadier) steering|longer', '(slightly quicker|quicker) steering|shorter'],
  wheelbase: ['longer', 'shorter'],
  seatHeight: ['higher', 'lower'],
  swingarmAngle: ['steeper', 'flatter'],
  antiSquat: ['holds the rear up (slightly )?more', 'holds the rear up (slightly )?less'],
  finalDriveRatio: ['shorter', 'taller'],
  frontTravel: ['further', 'nearer'],
  rearTravel: ['further', 'nearer'],
};

/** The figures of a text with their signs. */
function figures(text: string): number[] {
  return [...text.matchAll(/[+−]?\d+(?:\.\d+)?/g)].map(([figure]) => Number(figure.replace('−', '-')));
}

function stand(
  bike: Bike,
  setup: Setup,
  state: 'toppedOut' | 'riderUp' | 'accelerating',
): StandingBike | null {
  const found = standBike(bike, setup, state);
  return found.ok ? found : null;
}

/** A reading as its line shows it: the figure, and its change as amount and direction. */
function shown(reading: Reading, before: StandingBike, after: StandingBike, style: NumberStyle) {
  const { fromCore } = QUANTITIES[reading.quantity];
  const [from, to] = [reading.read(before), reading.read(after)];
  if (typeof from !== 'number' || typeof to !== 'number') return null;
  const write = (value: number): string => writeNumber(fromCore(value), reading.quantity, style).text;
  return {
    from: write(from),
    to: write(to),
    difference: differenceOf(fromCore(to), fromCore(from), reading.quantity, style),
  };
}

describe('sentences with figures', () => {
  it('of Why have the change that the reading shows, a word that agrees with its sign, and shares that add up', () => {
    let told = 0;
    fc.assert(
      fc.property(bikes, changes, fc.constantFrom(...STYLES), ({ bike, setup, state }, turned, style) => {
        const to = { ...setup, ...turned };
        const [before, after] = [stand(bike, setup, state), stand(bike, to, state)];
        fc.pre(before !== null && after !== null);
        if (before === null || after === null) return;
        const splits = splitByAdjuster(
          { bike, setup, stance: before },
          { bike, setup: to, stance: after },
          (asSet) => stand(asSet.bike, asSet.setup, state),
        );
        for (const { reading, text } of whyStory(splits, why(before, after), CHAIN, style).sentences) {
          const line = shown(EXPLAINED[reading as ExplainedKey], before, after, style);
          if (line === null) throw new Error(`no line for ${text}`);
          const { label } = EXPLAINED[reading as ExplainedKey];
          const [change, ...rest] = figures(text.slice(label.length));
          expect(Math.sign(change)).toBe(line.difference.direction === 'more' ? 1 : -1);
          const word = WORDS[reading as ExplainedKey][change > 0 ? 0 : 1];
          expect(text.startsWith(`${label} ${line.difference.amount}, `), text).toBe(true);
          expect(text.slice(`${label} ${line.difference.amount}, `.length), text).toMatch(
            new RegExp(`^(?:${word})`, 'u'),
          );
          const shares = text.includes('all from') ? [] : rest;
          if (shares.length > 0) expect(sum(shares), text).toBeCloseTo(change, 9);
          told++;
        }
      }),
      { numRuns: cases(150) },
    );
    expect(told).toBeGreaterThan(cases(100));
  });

  it('of the mechanism go from the figure that the reading showed to the one it shows', () => {
    let told = 0;
    fc.assert(
      fc.property(bikes, changes, fc.constantFrom(...STYLES), ({ bike, setup, state }, turned, style) => {
        const [before, after] = [stand(bike, setup, state), stand(bike, { ...setup, ...turned }, state)];
        fc.pre(before !== null && after !== null);
        if (before === null || after === null) return;
        for (const { text } of mechanismStory(why(before, after), style).all) {
          const reading = READINGS.find(({ label }) => text.startsWith(`${label} `));
          if (reading === undefined) continue;
          const line = shown(reading, before, after, style);
          if (line === null) throw new Error(`no line for ${text}`);
          const { amount } = line.difference;
          expect(text).toContain(`${reading.label} ${amount}, from ${line.from} to ${line.to}: `);
          told++;
        }
      }),
      { numRuns: cases(100) },
    );
    expect(told).toBeGreaterThan(cases(60));
  });

  it('to be read out go from the figure that the reading showed to the one it shows, with words that agree', () => {
    let told = 0;
    const readings = [
      {
        reading: EXPLAINED.rake,
        says: ['axis stands slacker on the road', 'axis stands steeper on the road'],
      },
      { reading: EXPLAINED.trail, says: ['further ahead of the point', 'nearer to the point'] },
      {
        reading: EXPLAINED.antiSquat,
        says: ['drive holds the rear up more', 'drive holds the rear up less'],
      },
    ] as const;
    fc.assert(
      fc.property(bikes, changes, fc.constantFrom(...STYLES), ({ bike, setup, state }, turned, style) => {
        const [before, after] = [stand(bike, setup, state), stand(bike, { ...setup, ...turned }, state)];
        fc.pre(before !== null && after !== null);
        if (before === null || after === null) return;
        const text = readOut(why(before, after), [], state, style).join(' ');
        for (const { reading, says } of readings) {
          const line = shown(reading, before, after, style);
          if (line === null) throw new Error(`no line for ${reading.key}`);
          for (const [at, words] of says.entries()) {
            if (!text.includes(words)) continue;
            expect(text).toContain(`was ${line.from} and is ${line.to}`);
            expect(line.difference.direction, text).toBe(at === 0 ? 'more' : 'less');
            told++;
          }
        }
      }),
      { numRuns: cases(100) },
    );
    expect(told).toBeGreaterThan(cases(60));
  });

  it('of gas and brakes say sinks, rises, squats or lifts only with a figure above zero', () => {
    const made = machine(linkedBike, sprungSetup);
    if (!made.ok) throw new Error(made.reason);
    const sprung = sprungMachine(made);
    if (!sprung.ok) throw new Error(sprung.reason);
    const effects = riderEffects(sprung, sprungSetup);
    const { gasOpened } = effects;
    if (!gasOpened.ok) throw new Error(gasOpened.reason);
    let still = 0;
    fc.assert(
      fc.property(fc.integer({ min: -30, max: 30 }), fc.constantFrom(...STYLES), (hundredths, style) => {
        const by = hundredths / 100;
        const moved = { ...effects, gasOpened: { ...gasOpened, front: by, rear: -by } };
        const [{ words }] = riderEffectsTold(moved, sprungSetup, CHAIN, style);
        const digits = writeNumber(Math.abs(by), 'length', style).digits;
        if (Number(digits) === 0) {
          expect(words).toContain('the rear stays where it is, the front stays where it is');
          still++;
        } else {
          expect(words).toContain(`the front ${by > 0 ? 'sinks' : 'rises'} ${digits}`);
          expect(words).toContain(`the rear ${by > 0 ? 'lifts' : 'squats'} ${digits}`);
        }
      }),
    );
    expect(still).toBeGreaterThan(0);
  });
});

function sum(values: readonly number[]): number {
  return values.reduce((all, value) => all + value, 0);
}
