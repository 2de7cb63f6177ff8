/** Each limit that a refusal tells is where a bisection of the balance itself finds it, whatever was asked. */
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { CHAIN } from '../../src/core/parts/drive-noun.ts';
import { balance } from '../../src/core/riding/equilibrium/equilibrium.ts';
import { throttleClosedForces, type RideForces } from '../../src/core/riding/equilibrium/ride-forces.ts';
import { machine } from '../../src/core/standing/machine.ts';
import { sprungMachine, type SprungMachine } from '../../src/core/springs/sprung-machine.ts';
import { noEquilibriumWords } from '../../src/words/trouble/no-equilibrium-words.ts';
import { cases } from '../support/cases.ts';
import { softBike } from '../support/random-bikes.ts';
import { likelySprings } from '../support/random-springs.ts';

/** Where the bisection ends, g. */
const CLOSE = 1e-9;
/** How far the two may be apart, g: each is found to 1e-10, in a posture found to 1e-9 mm. */
const SAME = 1e-7;
/** How many bikes whose wheel lifts are held against a bisection. */
const BIKES = cases(50);
/** Springs that fall off leave a bike several rests, each with a limit for itself; so few have them. */
const MOST_SEVERAL = 2 + BIKES / 100;
/** Part of all that are drawn, and how long it may take on a slow machine, ms. */
const DRAWN = 3 * BIKES;
const PATIENCE_MS = cases(60_000);
const METRIC = { system: 'metric', decimal: '.' } as const;

/** The most at which the bike comes to rest: halved down from what it lifts at. Null where it does not even coast. */
function bisected(sprung: SprungMachine, at: (amount: number) => RideForces, lifts: number): number | null {
  if (!balance(sprung, at(0)).ok) return null;
  let low = 0;
  let high = lifts;
  while (high - low > CLOSE) {
    const middle = (low + high) / 2;
    if (balance(sprung, at(middle)).ok) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** How far beside a limit a bike is stood, g. */
const BESIDE = 1e-6;

/**
 * Springs that fall off leave a bike two rests, each with a limit for itself, and now and then no rest is found at all. Then
 * what is told is the limit of one of them: the wheel is down just below it and lifts just above.
 */
function isOneOfSeveral(
  sprung: SprungMachine,
  at: (amount: number) => RideForces,
  told: number,
  bisected: number,
): boolean {
  const end = balance(sprung, at(bisected + BESIDE));
  if (!end.ok && end.reason !== 'frontLifts' && end.reason !== 'rearLifts') return true;
  return balance(sprung, at(told - BESIDE)).ok && !balance(sprung, at(told + BESIDE)).ok;
}

type Way = 'gas' | 'brakes' | 'throttleClosed';

const WAYS: Readonly<Record<Way, (drawn: RideForces, amount: number) => RideForces>> = {
  gas: (drawn, amount) => ({ ...drawn, acceleration: amount }),
  brakes: (drawn, amount) => ({ ...drawn, acceleration: -amount }),
  throttleClosed: (drawn, amount) => ({
    ...drawn,
    acceleration: -amount,
    engineBraking: Math.min(0.1, amount),
  }),
};

it(
  'a limit told is that of the balance, to the digit shown, and the same whatever more was asked',
  () => {
    let held = 0;
    let several = 0;
    fc.assert(
      fc.property(
        softBike,
        likelySprings,
        fc.constantFrom<Way>('gas', 'brakes', 'throttleClosed'),
        fc.double({ min: 1.2, max: 2, noNaN: true }),
        ({ bike, setup }, { springs, brake, forces }, way, asked) => {
          const parts = machine(bike, setup);
          const sprung = parts.ok ? sprungMachine(parts, springs, brake) : parts;
          if (!sprung.ok) return;
          const at = (amount: number): RideForces => WAYS[way]({ ...forces, drag: null }, amount);
          const told = balance(sprung, at(asked));
          if (told.ok || (told.reason !== 'frontLifts' && told.reason !== 'rearLifts')) return;
          const limit = bisected(sprung, at, asked);
          if (limit === null) return;
          held++;
          const more = balance(sprung, at(asked + 0.3));
          const same = (no: typeof more): boolean =>
            !no.ok && no.reason === told.reason && Math.abs((no.limit ?? NaN) - limit) < SAME;
          if (!same(told) || !same(more)) {
            for (const no of [told, more])
              if (!no.ok) expect(isOneOfSeveral(sprung, at, no.limit ?? NaN, limit)).toBe(true);
            several++;
            return;
          }
          const words = noEquilibriumWords(told, CHAIN, METRIC);
          const [, shown] = /stays on the ground up to ([\d.]+)\sg/.exec(words) ?? [];
          // Where both figures would look alike, they are written with more digits.
          const decimals = shown.split('.')[1].length;
          expect(decimals).toBeGreaterThanOrEqual(2);
          expect(Math.abs(Number(shown) - limit), words).toBeLessThan(0.5 * 10 ** -decimals + SAME);
        },
      ),
      { numRuns: DRAWN, endOnFailure: true },
    );
    expect(held).toBeGreaterThan(BIKES);
    expect(several).toBeLessThan(MOST_SEVERAL);
  },
  PATIENCE_MS,
);

it('with a closed throttle and drag the amount counts both, as the bike slows by both', () => {
  let held = 0;
  let several = 0;
  fc.assert(
    fc.property(softBike, likelySprings, ({ bike, setup }, { springs, brake }) => {
      const parts = machine(bike, setup);
      const sprung = parts.ok ? sprungMachine(parts, springs, brake) : parts;
      if (!sprung.ok) return;
      const asSet = { ...setup, dragForce: 200, dragHeight: 600 };
      const at = (brakes: number): RideForces =>
        throttleClosedForces({ engine: 0.1, brakes, lean: 0 }, asSet);
      const told = balance(sprung, at(2));
      if (told.ok || told.reason !== 'rearLifts') return;
      const limit = bisected(sprung, at, 2);
      if (limit === null) return;
      const just = balance(sprung, at(limit - BESIDE));
      if (!just.ok) return;
      held++;
      if (Math.abs((told.limit ?? NaN) + just.loads.acceleration) < 1e-5) return;
      // What is told counts the drag, and what is set does not.
      const drag = -just.loads.acceleration - (limit - BESIDE);
      expect(isOneOfSeveral(sprung, at, (told.limit ?? NaN) - drag, limit)).toBe(true);
      several++;
    }),
    { numRuns: cases(30), endOnFailure: true },
  );
  expect(held).toBeGreaterThan(cases(5));
  expect(several).toBeLessThan(2 + held / 100);
});
