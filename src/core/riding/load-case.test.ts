/** Tests of the ways of riding in which a bike is read. */
import { describe, expect, it } from 'vitest';
import { reached, sprung, withForkSprings, withShock } from '../../../tests/support/plain-springs.ts';
import { balance } from './equilibrium.ts';
import { alone } from './loads.ts';
import { forcesIn, ridden, type LoadCase } from './load-case.ts';
import { AT_REST } from './ride-forces.ts';

const bike = sprung();
const travelIn = (ride: LoadCase, made = bike) => reached(ridden(made, ride)).stance.travel;

describe('a bike', () => {
  it('topped out hangs at full extension, or where its top-out springs hold it', () => {
    expect(travelIn({ kind: 'toppedOut' })).toEqual({ front: 0, rear: 0 });
    const held = sprung(
      withForkSprings({ topOut: { length: 25, rate: 14 } }, withShock({ topOut: { length: 6, rate: 400 } })),
    );
    const { front, rear } = travelIn({ kind: 'toppedOut' }, held);
    expect(front).toBeGreaterThan(1);
    expect(rear).toBeGreaterThan(0.5);
    expect(reached(ridden(held, { kind: 'toppedOut' })).balance).toBeNull();
  });

  it('alone carries neither rider nor load, and sits higher than with its rider up', () => {
    expect(travelIn({ kind: 'noRider' })).toEqual(reached(balance(alone(bike), AT_REST)).stance.travel);
    expect(travelIn({ kind: 'noRider' }).rear).toBeLessThan(travelIn({ kind: 'riderUp' }).rear);
  });

  it('on the gas rises at the front, on the brakes dives there', () => {
    const still = travelIn({ kind: 'riderUp' });
    const gas = travelIn({ kind: 'accelerating', acceleration: 0.4, drag: null });
    const brakes = travelIn({ kind: 'braking', deceleration: 0.4, frontShare: 0.8, drag: null });
    expect(gas.front).toBeLessThan(still.front - 10);
    expect(brakes.front).toBeGreaterThan(still.front + 10);
    expect(brakes.rear).toBeLessThan(still.rear);
  });

  it('in mid-corner sits lower, and can be on gas or brake there', () => {
    const corner = (acceleration: number): LoadCase => ({
      kind: 'midCorner',
      lean: 0.6,
      acceleration,
      frontShare: 1,
      drag: null,
    });
    expect(travelIn(corner(0)).front).toBeGreaterThan(travelIn({ kind: 'riderUp' }).front);
    expect(travelIn(corner(0.2)).front).toBeLessThan(travelIn(corner(0)).front);
    expect(travelIn(corner(-0.2)).front).toBeGreaterThan(travelIn(corner(0)).front);
  });

  it('travel set by hand stands at the travel given, which is refused beyond the travel there is', () => {
    const asSet = reached(ridden(bike, { kind: 'travelByHand', travel: { front: 33, rear: 44 } }));
    expect(asSet.stance.travel).toEqual({ front: 33, rear: 44 });
    expect(asSet.balance).toBeNull();
    expect(ridden(bike, { kind: 'travelByHand', travel: { front: 333, rear: 44 } })).toMatchObject({
      reason: 'forkTravelBeyond',
    });
  });

  it('has no steady forces topped out and travel set by hand', () => {
    expect(forcesIn({ kind: 'toppedOut' })).toBeNull();
    expect(forcesIn({ kind: 'travelByHand', travel: { front: 0, rear: 0 } })).toBeNull();
    expect(forcesIn({ kind: 'braking', deceleration: 0.5, frontShare: 0.7, drag: null })).toEqual({
      acceleration: -0.5,
      lean: 0,
      frontBrakeShare: 0.7,
      drag: null,
    });
  });
});
