/** The rear travel offered is that of the bike as it is set, and its end as written is accepted back. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { CURVE_AXES } from '../../src/curves/curve-axes.ts';
import { DEMO_BIKES } from '../../src/document/demos/demo-bikes.ts';
import { adjusterOf } from '../../src/core/adjusters/all-adjusters.ts';
import type { Setup } from '../../src/core/adjusters/setup.ts';
import type { Bike } from '../../src/core/parts/bike.ts';
import { rearTravel } from '../../src/core/readings/rear-travel.ts';
import { rearTravelLeft } from '../../src/core/readings/rear-travel-left.ts';
import { standBike } from '../../src/core/riding/stand-bike.ts';
import { adjusterRange } from '../../src/core/standing/adjuster-range.ts';
import { adjustersOutOfRange } from '../../src/core/standing/adjusters-out-of-range.ts';
import { machine } from '../../src/core/standing/machine.ts';
import { stance } from '../../src/core/standing/stance.ts';
import { cases } from '../support/cases.ts';
import { plainBike, plainSetup, withSwingarm } from '../support/plain-bike.ts';
import { likelyBike } from '../support/random-bikes.ts';
import { randomLinkage } from '../support/random-layouts.ts';

const adjuster = adjusterOf('rearTravelUsed');
const axes = CURVE_AXES.filter(({ key }) => key === 'rearTravel' || key === 'bothTravels');
/** The shock is closed at the end of the travel to this, mm. */
const CLOSED = 1e-6;
/** Clearly beyond the end of the travel as written, mm. */
const BEYOND = 0.2;

/** Checks one bike; false where its parts make none or it does not stand over its whole travel. */
function isHeld(bike: Bike, setup: Setup): boolean {
  const made = machine(bike, setup);
  if (!made.ok) return false;
  const { most } = adjusterRange(adjuster, bike, setup);
  expect(most).toBe(made.rear.wheelTravel);
  for (const axis of axes) expect(axis.range({ bike, setup }).most).toBe(most);
  const atEnd = stance(made, { front: setup.frontTravelUsed, rear: most });
  if (!atEnd.ok) return false;
  // A second way to where it ends: the shock has gone in by its whole stroke.
  if (bike.swingarm.links !== null && made.rear.endsBy === 'shockClosed') {
    const { fullLength, closedLength } = bike.swingarm.links.shock;
    expect(Math.abs(atEnd.arm.shockStroke - (fullLength - closedLength))).toBeLessThan(CLOSED);
  }
  expect(stance(made, { front: setup.frontTravelUsed, rear: most + BEYOND })).toMatchObject({
    ok: false,
    reason: 'rearTravelBeyond',
  });
  // Without springs, so that the travel left ends at the stop and not at closed coils.
  const whole = { ...setup, shockSpringRate: 0, rearTravelUsed: Math.min(10, most) };
  const part = standBike(bike, whole, 'travelByHand');
  if (!part.ok) return false;
  const [used, left] = [rearTravel.read(part), rearTravelLeft.read(part)];
  if (typeof used !== 'number' || typeof left !== 'number') throw new Error('a travel without a number');
  for (const written of [used + left, Number((used + left).toFixed(1)), Number(most.toFixed(6))]) {
    const asWritten = { ...setup, rearTravelUsed: written };
    const back = standBike(bike, asWritten, 'travelByHand');
    expect(back).toMatchObject({ ok: true });
    if (back.ok) expect(Math.abs(back.travel.rear - most)).toBeLessThanOrEqual(0.05 + 1e-9);
    expect(adjustersOutOfRange(bike, asWritten).map(({ adjuster: { key } }) => key)).not.toContain(
      'rearTravelUsed',
    );
  }
  return true;
}

describe('rear travel used reaches as far as the bike does', () => {
  it.each(DEMO_BIKES.map((demo) => [demo.bike.name, demo] as const))(
    'on %s, as delivered and with axle, shock and shim set otherwise',
    (_name, { bike, setup }) => {
      const axleBack = { ...setup, chainLinks: null, axlePosition: bike.swingarm.slot };
      const others: Setup[] = [
        setup,
        axleBack,
        { ...axleBack, shockLength: 4 },
        { ...setup, shockLength: -4 },
        { ...setup, shockMountShim: 3 },
      ];
      for (const other of others) expect(isHeld(bike, other)).toBe(true);
      const ends = others.map((other) => adjusterRange(adjuster, bike, other).most);
      expect(new Set(ends.map((end) => end.toFixed(2))).size).toBeGreaterThan(1);
    },
  );

  it('on random bikes with a travel table', () => {
    let held = 0;
    fc.assert(
      fc.property(likelyBike, ({ bike, setup }) => {
        if (isHeld(bike, setup)) held += 1;
      }),
      { numRuns: cases(300) },
    );
    expect(held).toBeGreaterThan(cases(100));
  });

  it('on random linkages with their adjusters turned', () => {
    let held = 0;
    fc.assert(
      fc.property(randomLinkage, ({ layout, adjusters }) => {
        const bike = withSwingarm(plainBike, { links: layout });
        if (isHeld(bike, { ...plainSetup, ...adjusters, axlePosition: Math.max(0, adjusters.axlePosition) }))
          held += 1;
      }),
      { numRuns: cases(1000) },
    );
    expect(held).toBeGreaterThan(cases(100));
  });
});
