/** Tests of the adjuster's step that meets a wanted height, each against every step tried. */
import { describe, expect, it } from 'vitest';
import fc from 'fast-check';
import { cases } from '../../../tests/support/cases.ts';
import { SPRUNG_BIKES, SPRUNG_ROAD } from '../../../tests/support/sprung-bikes.ts';
import { adjusterOf } from '../adjusters/all-adjusters.ts';
import type { Setup } from '../adjusters/setup.ts';
import type { Bike } from '../parts/bike.ts';
import { adjusterRange } from '../standing/adjuster-range.ts';
import { standBike } from '../riding/stand-bike.ts';
import { HEIGHT_PLACES, heightPlace, heightRise, heightsAt } from './height-places.ts';
import { reachHeight } from './reach-height.ts';

const standing = (bike: Bike) => (asked: Setup) => {
  const on = standBike(bike, asked, 'riderUp');
  return on.ok ? on : null;
};

describe('a wanted height', () => {
  it('is met to within half a step, by a whole step, and no neighbour comes nearer', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...SPRUNG_BIKES),
        fc.constantFrom(...HEIGHT_PLACES),
        fc.double({ min: -9, max: 9, noNaN: true }),
        fc.integer({ min: -2, max: 2 }),
        ({ bike, setup }, place, wanted, turned) => {
          const stand = standing(bike);
          // The other end is turned too: the height is that of the whole change.
          const other = place.adjuster === 'forkTubes' ? 'shockLength' : 'forkTubes';
          const now = { ...setup, [other]: setup[other] + turned };
          const found = reachHeight(bike, now, setup, place, wanted, stand);
          if (!found.ok) throw new Error(found.reason);
          const from = stand(setup);
          const at = (value: number): number => {
            const to = stand({ ...now, [place.adjuster]: value });
            return from === null || to === null ? Infinity : heightRise(place, from, to);
          };
          const { value, rise } = found.step;
          expect(at(value)).toBeCloseTo(rise, 9);
          const { step } = adjusterRange(adjusterOf(place.adjuster), bike, setup);
          for (const by of [-step, step])
            expect(Math.abs(at(value + by) - wanted)).toBeGreaterThanOrEqual(Math.abs(rise - wanted) - 1e-9);
          if (found.other !== null)
            expect(Math.sign(found.other.rise - wanted)).toBe(-Math.sign(rise - wanted));
        },
      ),
      { numRuns: cases(20) },
    );
  });

  it('that a step gives exactly is that step, with no other named', () => {
    const { bike, setup } = SPRUNG_ROAD;
    const stand = standing(bike);
    const shockLength = setup.shockLength + 4 * adjusterRange(adjusterOf('shockLength'), bike, setup).step;
    const [from, to] = [stand(setup), stand({ ...setup, shockLength })];
    if (from === null || to === null) throw new Error('The road bike stands.');
    const heights = heightsAt(heightPlace('seat'), from, to);
    const wanted = heights.after - heights.before;
    expect(reachHeight(bike, setup, setup, heightPlace('seat'), wanted, stand)).toEqual({
      ok: true,
      step: { value: shockLength, rise: wanted, ...heights },
      other: null,
    });
  });

  it('beyond the range is refused, with the furthest that the range gives', () => {
    const { bike, setup } = SPRUNG_ROAD;
    const found = reachHeight(bike, setup, setup, heightPlace('front'), -500, standing(bike));
    expect(found).toMatchObject({ ok: false, reason: 'heightOutOfReach', found: -500, end: 'front' });
    expect(found.ok ? 0 : found.limit).toBeLessThan(-20);
  });

  it('of a bike that stands nowhere is refused', () => {
    const { bike, setup } = SPRUNG_ROAD;
    expect(reachHeight(bike, setup, setup, heightPlace('front'), -5, () => null)).toEqual({
      ok: false,
      reason: 'noHeight',
    });
  });
});
