/** Random springs and steady forces for properties: likely ones, and absurd ones that need only be refused with a reason. */
import fc from 'fast-check';
import type { RearBrake } from '../../src/core/standing/rear-brake.ts';
import type { RideForces } from '../../src/core/riding/ride-forces.ts';
import type { SpringSet } from '../../src/core/standing/spring-set.ts';
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

const fork = fc.record({
  legs: fc.constantFrom(1, 2),
  rate: between(6, 14),
  preload: between(0, 30),
  springTravel: fc.option(between(60, 300)),
  topOut: fc.option(fc.record({ length: between(5, 40), rate: between(3, 20) })),
  bump,
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
  ['springs', 'shock', 'rate'],
  ['springs', 'shock', 'preload'],
  ['springs', 'shock', 'springTravel'],
  ['springs', 'shock', 'fullLength'],
  ['springs', 'shock', 'closedLength'],
  ['forces', 'acceleration'],
  ['forces', 'lean'],
  ['forces', 'frontBrakeShare'],
];

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
    for (const [place, number] of wrongs) drawn = replaced(drawn, place, number);
    return drawn;
  });
