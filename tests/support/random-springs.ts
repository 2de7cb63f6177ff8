/** Random springs and steady forces for properties: likely ones, and absurd ones that need only be refused with a reason. */
import fc from 'fast-check';
import type { RearBrake } from '../../src/core/standing/rear-brake.ts';
import type { RideForces } from '../../src/core/riding/equilibrium/ride-forces.ts';
import type { FilledAir, SpringSet } from '../../src/core/standing/spring-set.ts';
import type { ForceRow, MainSpring } from '../../src/core/parts/support.ts';
import { replaced } from './random-bikes.ts';

export interface RandomSprings {
  readonly springs: SpringSet;
  readonly brake: RearBrake;
  readonly forces: RideForces;
}

const between = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });

const bump = fc.option(
  fc.record({ startsAt: between(20, 70), rate: between(5, 60), exponent: between(1, 4) }),
);

/** Kinds of main spring whose first rate lies in a range, N/mm; most bikes have one rate. */
const spring = (least: number, most: number): fc.Arbitrary<MainSpring> =>
  fc.oneof(
    { weight: 6, arbitrary: fc.constant<MainSpring>({ kind: 'oneRate' }) },
    fc.record({
      kind: fc.constant('inSeries' as const),
      otherRate: between(2 * least, 4 * most),
      firstCloses: fc.option(between(20, 200)),
      otherCloses: fc.option(between(20, 200)),
    }),
    fc.record({
      kind: fc.constant('twoRates' as const),
      secondRate: between(least, 2 * most),
      changeover: between(0, 120),
    }),
    fc
      .array(fc.record({ mm: between(10, 40), rate: between(least, most) }), { minLength: 1, maxLength: 5 })
      .map((steps): MainSpring => {
        const rows: ForceRow[] = [{ pressed: 0, force: 0 }];
        for (const { mm, rate } of steps) {
          const last = rows[rows.length - 1];
          rows.push({ pressed: last.pressed + mm, force: last.force + mm * rate });
        }
        return { kind: 'table', rows };
      }),
  );

/** Air between the sizes of a fork leg and of a shock, with a gap that leaves some at full compression. */
const air: fc.Arbitrary<FilledAir | null> = fc.option(
  fc.record({
    bore: between(35, 50),
    slidingTube: between(30, 50),
    exponent: between(1, 1.4),
    steelVolume: between(0, 20_000),
    gap: between(60, 200),
    pressure: between(-0.05, 0.3),
    balance: fc.option(
      fc.record({
        volume: between(20_000, 80_000),
        bore: between(30, 40),
        rod: between(8, 20),
        pressure: between(0, 0.3),
      }),
    ),
  }),
  { freq: 2 },
);

const fork = fc.record({
  legs: fc.constantFrom(1, 2),
  rate: between(6, 14),
  preload: between(0, 30),
  springTravel: fc.option(between(60, 300)),
  topOut: fc.option(fc.record({ length: between(5, 40), rate: between(3, 20) })),
  bump,
  spring: spring(6, 14),
  air,
  otherLeg: fc.option(
    fc.record({
      rate: between(6, 14),
      preload: between(0, 30),
      springTravel: fc.option(between(60, 300)),
      spring: spring(6, 14),
      air,
    }),
  ),
});

const shock = fc.record({
  shocks: fc.constantFrom(1, 2),
  rate: between(40, 160),
  preload: between(0, 25),
  springTravel: fc.option(between(40, 120)),
  fullLength: between(300, 360),
  closedLength: between(220, 260),
  topOut: fc.option(fc.record({ length: between(2, 12), rate: between(20, 120) })),
  bump: fc.option(fc.record({ startsAt: between(15, 35), rate: between(20, 200), exponent: between(1, 4) })),
  spring: spring(40, 160),
  air,
});

const brake: fc.Arbitrary<RearBrake> = fc.oneof(
  fc.constant<RearBrake>({ caliper: 'onArm' }),
  fc.record({
    caliper: fc.constant('ownStay' as const),
    anchor: fc.record({ x: between(-80, 20), y: between(-130, 60) }),
    bracketRadius: between(60, 140),
    stayLength: between(450, 650),
    bracketSide: fc.constantFrom('above' as const, 'below' as const),
  }),
);

const forces = fc.record({
  acceleration: between(-1.1, 1.1),
  lean: between(-1, 1),
  frontBrakeShare: between(0, 1),
  drag: fc.option(fc.record({ force: between(0, 900), height: between(300, 1000) })),
});

export const likelySprings: fc.Arbitrary<RandomSprings> = fc.record({
  springs: fc.record({ fork, shock }),
  brake,
  forces,
});

const ABSURD = [NaN, Infinity, -Infinity, 1e300, -1e300, 1e9, 1e-300, -0, 0, -1, 1.5, 1e5];

const PLACES: readonly (readonly string[])[] = [
  ['springs', 'fork', 'legs'],
  ['springs', 'fork', 'rate'],
  ['springs', 'fork', 'preload'],
  ['springs', 'fork', 'springTravel'],
  ['springs', 'fork', 'air', 'gap'],
  ['springs', 'fork', 'air', 'pressure'],
  ['springs', 'fork', 'spring', 'otherRate'],
  ['springs', 'fork', 'spring', 'changeover'],
  ['springs', 'fork', 'otherLeg', 'rate'],
  ['springs', 'shock', 'air', 'bore'],
  ['springs', 'shock', 'air', 'exponent'],
  ['springs', 'shock', 'rate'],
  ['springs', 'shock', 'preload'],
  ['springs', 'shock', 'springTravel'],
  ['springs', 'shock', 'fullLength'],
  ['springs', 'shock', 'closedLength'],
  ['forces', 'acceleration'],
  ['forces', 'lean'],
  ['forces', 'frontBrakeShare'],
];

/** Whether a number, or none where one may stand, lies at a path: not every spring has every part. */
function holds(value: unknown, [key, ...rest]: readonly string[]): boolean {
  if (typeof value !== 'object' || value === null || !(key in value)) return false;
  return rest.length === 0 || holds((value as Record<string, unknown>)[key], rest);
}

/** Springs and forces with one or two numbers made absurd. */
export const absurdSprings: fc.Arbitrary<RandomSprings> = fc
  .record({
    likely: likelySprings,
    wrongs: fc.array(fc.tuple(fc.constantFrom(...PLACES), fc.constantFrom(...ABSURD)), {
      minLength: 1,
      maxLength: 2,
    }),
  })
  .map(({ likely, wrongs }) => {
    let drawn = likely;
    for (const [place, number] of wrongs) if (holds(drawn, place)) drawn = replaced(drawn, place, number);
    return drawn;
  });
