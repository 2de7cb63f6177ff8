/** The lean at first touch against tyres as solid bodies: two tori in space that a plane is laid against, point by point. */
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { cases } from '../support/cases.ts';
import { plainBike, plainSetup } from '../support/plain-bike.ts';
import { onGround } from '../../src/core/chassis/pose.ts';
import type { Bike } from '../../src/core/parts/bike.ts';
import { standBike } from '../../src/core/riding/stand-bike.ts';
import { touchLean } from '../../src/core/riding/touch-lean.ts';
import { degrees } from '../../src/core/units/convert.ts';

interface Place {
  readonly x: number;
  readonly y: number;
  /** Out from the middle plane. */
  readonly z: number;
}

const ROUND = 400;
const CIRCLE = Array.from({ length: ROUND }, (_, i) => ({
  x: Math.cos((2 * Math.PI * i) / ROUND),
  y: Math.sin((2 * Math.PI * i) / ROUND),
}));

/** How far the surface of a tyre reaches against the direction `up`, found by going round it in small steps. */
function reach(axle: Place, radius: number, crown: number, up: Place): number {
  let lowest = CIRCLE[0];
  for (const at of CIRCLE) if (at.x * up.x + at.y * up.y < lowest.x * up.x + lowest.y * up.y) lowest = at;
  // A torus: at the lowest place of the ring, the lowest place of the tread across it.
  let least = Infinity;
  for (const across of CIRCLE) {
    const out = radius - crown + crown * across.x;
    const x = axle.x + out * lowest.x;
    const y = axle.y + out * lowest.y;
    least = Math.min(least, x * up.x + y * up.y + crown * across.y * up.z);
  }
  return least;
}

function between(value: (x: number) => number, low: number, high: number): number {
  let [a, b] = [low, high];
  for (let i = 0; i < 26; i += 1) {
    const middle = (a + b) / 2;
    if (value(middle) > 0 === value(a) > 0) a = middle;
    else b = middle;
  }
  return (a + b) / 2;
}

const bikes = fc.record({
  height: fc.double({ min: 120, max: 320, noNaN: true }),
  x: fc.double({ min: -250, max: 450, noNaN: true }),
  halfWidth: fc.double({ min: 120, max: 380, noNaN: true }),
  front: fc.double({ min: 40, max: 75, noNaN: true }),
  rear: fc.double({ min: 60, max: 110, noNaN: true }),
});

it('a plane laid against both tyres and the part leans as the reading says', () => {
  let touched = 0;
  fc.assert(
    fc.property(bikes, ({ height, x, halfWidth, front, rear }) => {
      const { touching } = plainBike.frame;
      const bike: Bike = {
        ...plainBike,
        frame: { ...plainBike.frame, touching: { ...touching, belly: { x, y: height - 420, halfWidth } } },
        frontWheel: { ...plainBike.frontWheel, crownRadius: front },
        rearWheel: { ...plainBike.rearWheel, crownRadius: rear },
      };
      const on = standBike(bike, plainSetup, 'toppedOut');
      if (!on.ok) throw new Error(on.reason);
      const told = touchLean(on);
      if (told === null || told === 0) return;
      touched += 1;
      const part = { ...onGround(on.pose, { x, y: height - 420 }), z: halfWidth };
      const [back, fore] = [
        { ...on.rearAxle, z: 0 },
        { ...on.frontAxle, z: 0 },
      ];
      const { frontRadius, rearRadius } = on.machine;
      // Up, seen from the bike leaned over toward the part, and pitched until both tyres rest on the plane.
      const upAt = (lean: number, pitch: number): Place => ({
        x: Math.sin(pitch) * Math.cos(lean),
        y: Math.cos(pitch) * Math.cos(lean),
        z: -Math.sin(lean),
      });
      const clearance = (lean: number): number => {
        const uneven = (pitch: number): number => {
          const up = upAt(lean, pitch);
          return reach(fore, frontRadius, front, up) - reach(back, rearRadius, rear, up);
        };
        const up = upAt(lean, between(uneven, -0.3, 0.3));
        return part.x * up.x + part.y * up.y + part.z * up.z - reach(back, rearRadius, rear, up);
      };
      const found = between(clearance, 0, told + 0.2);
      expect(degrees(found)).toBeCloseTo(degrees(told), 1);
    }),
    { numRuns: cases(12) },
  );
  expect(touched).toBeGreaterThan(3);
});
