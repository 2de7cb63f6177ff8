/** Tests of the limits at which a wheel leaves the ground. */
import { describe, expect, it } from 'vitest';
import { plainBike, plainSetup, withFrame } from '../../../../tests/support/plain-bike.ts';
import {
  plainSprings,
  reached,
  sprung,
  withForkSprings,
  withShock,
} from '../../../../tests/support/plain-springs.ts';
import { balance } from './equilibrium.ts';
import { frontLiftLimit, rearLiftLimit } from './lift-limits.ts';
import { AT_REST } from './ride-forces.ts';
import { stance, type Stance } from '../../standing/stance.ts';

const bike = sprung();

/** The limits of a posture, from moments about either patch. */
const frontLimitOf = (on: Stance): number => on.centre.x / on.centre.y;
const rearLimitOf = (on: Stance): number => (on.pose.wheelbase - on.centre.x) / on.centre.y;

describe('the front-lift limit', () => {
  it('is the acceleration at which the front carries nothing: just below it rests, just above it is refused', () => {
    const { limit } = reached(frontLiftLimit(bike, AT_REST));
    const below = reached(balance(bike, { ...AT_REST, acceleration: limit - 1e-6 }));
    expect(below.front.wheelLoad).toBeGreaterThan(0);
    expect(below.front.wheelLoad).toBeLessThan(0.01);
    expect(balance(bike, { ...AT_REST, acceleration: limit + 1e-6 })).toMatchObject({
      reason: 'frontLifts',
    });
  });

  it('is that of the posture it happens in, fork extended, and some per cent below that with the rider up', () => {
    const { limit, travel } = reached(frontLiftLimit(bike, AT_REST));
    expect(travel.front).toBe(0);
    expect(frontLimitOf(reached(stance(bike.machine, travel)))).toBeCloseTo(limit, 9);
    const ridden = frontLimitOf(reached(balance(bike, AT_REST)).stance);
    expect(limit / ridden).toBeGreaterThan(0.9);
    expect(limit / ridden).toBeLessThan(0.99);
  });

  it('is that of the first posture when both ends are held by their stops', () => {
    const stiff = sprung(withForkSprings({ preload: 500 }, withShock({ preload: 200 })));
    const { limit } = reached(frontLiftLimit(stiff, AT_REST));
    const toppedOut = reached(stance(stiff.machine, { front: 0, rear: 0 }));
    expect(limit).toBeCloseTo(toppedOut.centre.x / toppedOut.centre.y, 9);
  });

  it('grows in a lean, and shrinks with drag above the centre of gravity', () => {
    const { limit } = reached(frontLiftLimit(bike, AT_REST));
    expect(reached(frontLiftLimit(bike, { ...AT_REST, lean: 0.6 })).limit).toBeGreaterThan(1.1 * limit);
    const drag = { force: 300, height: 800 };
    expect(reached(frontLiftLimit(bike, { ...AT_REST, drag })).limit).toBeLessThan(limit - 0.1);
  });

  it('is refused when the front carries nothing as it stands', () => {
    const behind = sprung(plainSprings, withFrame(plainBike, { sprungCentre: { x: -1400, y: 100 } }));
    expect(frontLiftLimit(behind, AT_REST)).toMatchObject({ reason: 'massBehindRearAxle' });
    const sunk = sprung(plainSprings, withFrame(plainBike, { sprungCentre: { x: 190, y: -1500 } }), {
      ...plainSetup,
      riderMass: 0,
    });
    expect(frontLiftLimit(sunk, AT_REST)).toMatchObject({ reason: 'neverLifts', end: 'front' });
  });
});

describe('the rear-lift limit', () => {
  it('is the deceleration at which the rear carries nothing, in the posture it happens in', () => {
    const { limit, travel } = reached(rearLiftLimit(bike, AT_REST));
    expect(rearLimitOf(reached(stance(bike.machine, travel)))).toBeCloseTo(limit, 9);
    expect(balance(bike, { ...AT_REST, acceleration: 1e-6 - limit }).ok).toBe(true);
    expect(balance(bike, { ...AT_REST, acceleration: -limit - 1e-6 })).toMatchObject({
      reason: 'rearLifts',
    });
  });

  it('is refused when the rear carries nothing as it stands, or for what no balance takes', () => {
    const ahead = sprung(plainSprings, withFrame(plainBike, { sprungCentre: { x: 2400, y: 100 } }));
    expect(rearLiftLimit(ahead, AT_REST)).toMatchObject({ reason: 'massAheadOfFrontAxle' });
    expect(rearLiftLimit(bike, { ...AT_REST, lean: 2 })).toMatchObject({ reason: 'leanImpossible' });
  });
});
