/** Tests of both ends brought to their heights at once, against every pair of steps round about. */
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { cases } from '../../../tests/support/cases.ts';
import { SPRUNG_BIKES, SPRUNG_ROAD } from '../../../tests/support/sprung-bikes.ts';
import { adjusterOf } from '../adjusters/all-adjusters.ts';
import type { Setup } from '../adjusters/setup.ts';
import type { Bike } from '../parts/bike.ts';
import { standBike } from '../riding/stand-bike.ts';
import { adjusterRange } from '../standing/adjuster-range.ts';
import { heightPlace, heightRise } from './height-places.ts';
import { reachBothHeights } from './reach-both-heights.ts';

const standing = (bike: Bike) => (asked: Setup) => {
  const on = standBike(bike, asked, 'riderUp');
  return on.ok ? on : null;
};

it('both ends come as near to their heights as any pair of steps brings them', () => {
  let both = 0;
  fc.assert(
    fc.property(
      fc.constantFrom(...SPRUNG_BIKES),
      fc.double({ min: -8, max: 4, noNaN: true }),
      fc.double({ min: -6, max: 10, noNaN: true }),
      ({ bike, setup }, front, seat) => {
        const stand = standing(bike);
        const asked = [
          { place: heightPlace('front'), wanted: front },
          { place: heightPlace('seat'), wanted: seat },
        ];
        const found = reachBothHeights(bike, setup, setup, asked, stand);
        if (!found.ok) return;
        both += 1;
        const from = stand(setup);
        const missOf = (forkTubes: number, shockLength: number): number => {
          const to = stand({ ...setup, forkTubes, shockLength });
          if (from === null || to === null) return Infinity;
          return asked.reduce(
            (sum, { place, wanted }) => sum + (heightRise(place, from, to) - wanted) ** 2,
            0,
          );
        };
        const [fork, shock] = found.met.map(({ value }) => value);
        const least = missOf(fork, shock);
        const range = (key: 'forkTubes' | 'shockLength') => adjusterRange(adjusterOf(key), bike, setup);
        for (let f = -3; f <= 3; f += 1)
          for (let s = -3; s <= 3; s += 1) {
            const [tubes, length] = [
              fork + f * range('forkTubes').step,
              shock + s * range('shockLength').step,
            ];
            if (tubes < range('forkTubes').least || length < range('shockLength').least) continue;
            expect(missOf(tubes, length)).toBeGreaterThanOrEqual(least - 1e-9);
          }
      },
    ),
    { numRuns: cases(15) },
  );
  expect(both).toBeGreaterThan(cases(8));
});

it('an end that cannot reach its height is named', () => {
  const { bike, setup } = SPRUNG_ROAD;
  const asked = [
    { place: heightPlace('front'), wanted: -500 },
    { place: heightPlace('seat'), wanted: 5 },
  ];
  expect(reachBothHeights(bike, setup, setup, asked, standing(bike))).toMatchObject({
    ok: false,
    reason: 'heightOutOfReach',
    end: 'front',
  });
});
