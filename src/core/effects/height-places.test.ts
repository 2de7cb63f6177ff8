/** Tests of how far a place of the frame rises, against the frame carried over by two of its points. */
import { expect, it } from 'vitest';
import fc from 'fast-check';
import { cases } from '../../../tests/support/cases.ts';
import { likelyBike } from '../../../tests/support/random-bikes.ts';
import { linkedBike, sprungSetup } from '../../../tests/support/linked-bike.ts';
import { plainBike, plainSetup } from '../../../tests/support/plain-bike.ts';
import { standing } from '../../../tests/support/standing.ts';
import { onGround } from '../chassis/pose.ts';
import { machine } from '../standing/machine.ts';
import { stance, type Stance } from '../standing/stance.ts';
import { HEIGHT_PLACES, heightPlace, heightRise } from './height-places.ts';

/** Where a frame point that was at (x, y) on the ground stands afterwards, found from seat and tail alone. */
function carried({ x, y }: { x: number; y: number }, from: Stance, to: Stance): number {
  const place = (on: Stance, key: 'seat' | 'loadMark') => onGround(on.pose, on.machine.places[key]);
  const [a, b] = [place(from, 'seat'), place(from, 'loadMark')];
  const [c, d] = [place(to, 'seat'), place(to, 'loadMark')];
  const square = (b.x - a.x) ** 2 + (b.y - a.y) ** 2;
  const along = ((x - a.x) * (b.x - a.x) + (y - a.y) * (b.y - a.y)) / square;
  const across = ((y - a.y) * (b.x - a.x) - (x - a.x) * (b.y - a.y)) / square;
  return c.y + along * (d.y - c.y) + across * (d.x - c.x);
}

it('is what seat and tail carry along', () => {
  let counted = 0;
  fc.assert(
    fc.property(likelyBike, fc.double({ min: -8, max: 8, noNaN: true }), ({ bike, setup, travel }, by) => {
      const before = machine(bike, setup);
      const after = machine(bike, { ...setup, forkTubes: setup.forkTubes + by });
      if (!before.ok || !after.ok) return;
      const from = stance(before, travel);
      const to = stance(after, travel);
      if (!from.ok || !to.ok) return;
      const seat = bike.frame.seat;
      const tail = bike.frame.loadMark;
      if (Math.hypot(seat.x - tail.x, seat.y - tail.y) < 20) return;
      counted += 1;
      for (const place of HEIGHT_PLACES) {
        const was = place.on(from);
        expect(heightRise(place, from, to)).toBeCloseTo(carried(was, from, to) - was.y, 6);
        expect(heightRise(place, from, from)).toBeCloseTo(0, 9);
      }
    }),
  );
  expect(counted).toBeGreaterThan(cases(50));
});

it('above the front axle is the leg’s shortening times the cosine of the rake, where the frame hardly turns', () => {
  const from = standing();
  const to = standing(plainBike, { ...plainSetup, forkTubes: plainSetup.forkTubes + 1 });
  expect(heightRise(heightPlace('front'), from, to)).toBeCloseTo(-Math.cos(from.rake), 1);
  expect(Math.abs(heightRise(heightPlace('rear'), from, to))).toBeLessThan(0.02);
});

it('is what seat and tail carry along with the pivot held elsewhere by an eccentric', () => {
  const from = standing(linkedBike, sprungSetup);
  const to = standing(linkedBike, { ...sprungSetup, pivotUp: 4, pivotForward: -2 });
  for (const place of HEIGHT_PLACES) {
    const was = place.on(from);
    expect(heightRise(place, from, to)).toBeCloseTo(carried(was, from, to) - was.y, 9);
  }
  expect(Math.abs(heightRise(heightPlace('seat'), from, to))).toBeGreaterThan(0.1);
});
