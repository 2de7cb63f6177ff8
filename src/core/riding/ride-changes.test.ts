/** Tests of sag, squat and dive in mm. */
import { describe, expect, it } from 'vitest';
import { reached, sprung, withForkSprings } from '../../../tests/support/plain-springs.ts';
import { gasOpened } from '../../../tests/support/gas-opened.ts';
import { braked, rideChange, sag } from './ride-changes.ts';
import { AT_REST } from './equilibrium/ride-forces.ts';

const bike = sprung();

describe('sag', () => {
  it('is travel from hanging, by the bike alone and with the rider', () => {
    const { free, rider } = reached(sag(bike));
    expect(free.front).toBeGreaterThan(15);
    expect(rider.front).toBeGreaterThan(free.front + 5);
    expect(rider.rear).toBeGreaterThan(free.rear + 5);
  });

  it('counts from where a top-out spring lets the wheel hang', () => {
    const made = sprung(withForkSprings({ topOut: { length: 25, rate: 14 } }));
    const plain = reached(sag(bike)).rider.front;
    expect(made.hanging.front).toBeGreaterThan(1);
    expect(reached(sag(made)).rider.front).toBeCloseTo(plain - made.hanging.front, 6);
  });
});

describe('a change of forces', () => {
  it('by opening the gas in a corner is squat at the rear and a rise at the front', () => {
    const { front, rear, from, to } = reached(gasOpened(bike, 0.7, 0.3));
    expect(front).toBeLessThan(-5);
    expect(from.forces).toEqual({ ...AT_REST, lean: 0.7 });
    expect(to.forces.acceleration).toBe(0.3);
    expect(rear).toBe(to.stance.travel.rear - from.stance.travel.rear);
  });

  it('by braking is dive at the front and a rise at the rear, less with a share of rear brake', () => {
    const front = reached(braked(bike, 0.4, 1));
    expect(front.front).toBeGreaterThan(10);
    expect(front.rear).toBeLessThan(-5);
    const shared = reached(braked(bike, 0.4, 0.7));
    expect(shared.front).toBeLessThan(front.front);
    expect(shared.rear).toBeGreaterThan(front.rear);
  });

  it('there and back again is nothing', () => {
    const gas = { ...AT_REST, acceleration: 0.4 };
    const there = reached(rideChange(bike, AT_REST, gas));
    const back = reached(rideChange(bike, gas, AT_REST));
    expect(there.front + back.front).toBeCloseTo(0, 7);
    expect(there.rear + back.rear).toBeCloseTo(0, 7);
  });

  it('is refused for the reason of whichever state has no balance', () => {
    expect(gasOpened(bike, 0, 2)).toMatchObject({ reason: 'frontLifts' });
    expect(braked(bike, 2, 1)).toMatchObject({ reason: 'rearLifts' });
    expect(gasOpened(bike, 1.5, 0.2)).toMatchObject({ reason: 'leanImpossible' });
  });
});
