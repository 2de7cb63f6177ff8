/** Tests of the closed throttle: drag on top, the engine's part and the brakes', and the rise against coasting. */
import { describe, expect, it } from 'vitest';
import { reached, sprung } from '../../../tests/support/plain-springs.ts';
import { SPRUNG_ROAD } from '../../../tests/support/sprung-bikes.ts';
import { STANDARD_GRAVITY } from '../units/convert.ts';
import { balance } from './equilibrium/equilibrium.ts';
import { AT_REST, type RideForces } from './equilibrium/ride-forces.ts';
import { throttleShut } from './ride-changes.ts';
import { standBike } from './stand-bike.ts';
import { closedThrottleRise, throttleIsClosed } from './throttle-closed.ts';

const bike = sprung();
const closed: RideForces = { ...AT_REST, acceleration: -0.1, engineBraking: 0.1, slowedByDrag: 1 };

describe('a closed throttle', () => {
  it('slows the bike by engine, brakes and drag together, and the brakes’ share counts for the brakes alone', () => {
    const drag = { force: 300, height: 700 };
    const forces = { ...closed, acceleration: -0.4, frontBrakeShare: 0.75, drag };
    const { loads, stance } = reached(balance(bike, forces));
    const weight = stance.mass * STANDARD_GRAVITY;
    expect(loads.acceleration).toBeCloseTo(-0.4 - 300 / weight, 12);
    expect(loads.engineBrake).toBeCloseTo(0.1 * weight, 9);
    expect(loads.frontBrake).toBeCloseTo(0.75 * 0.3 * weight, 9);
    expect(loads.rearBrake).toBeCloseTo(0.25 * 0.3 * weight, 9);
    expect(loads.thrust).toBe(0);
    const moved = weight * 0.4 * stance.centre.y + 300 * (stance.centre.y - 700);
    const atRest = (weight * stance.centre.x) / stance.pose.wheelbase;
    expect(loads.frontLoad).toBeCloseTo(atRest + moved / stance.pose.wheelbase, 8);
  });

  it('without engine braking, brakes or drag is coasting', () => {
    const still = reached(balance(bike, { ...closed, acceleration: 0, engineBraking: 0 }));
    expect(still.stance.travel).toEqual(reached(balance(bike, AT_REST)).stance.travel);
  });

  it('moves the rear by what the two balances differ by, also when one of them is known', () => {
    const on = standBike(SPRUNG_ROAD.bike, { ...SPRUNG_ROAD.setup, closedLeanDeg: 30 }, 'throttleClosed');
    if (!on.ok || on.sprung === undefined || on.equilibrium === undefined) throw new Error('no rest');
    const { forces } = on.equilibrium;
    const change = reached(throttleShut(on.sprung, forces));
    const coasting = reached(balance(on.sprung, { ...AT_REST, lean: forces.lean }));
    expect(change.from.stance.travel.rear).toBeCloseTo(coasting.stance.travel.rear, 9);
    expect(closedThrottleRise(on)).toBeCloseTo(-change.rear, 8);
    expect(throttleIsClosed(on)).toBe(true);
    const open = standBike(SPRUNG_ROAD.bike, SPRUNG_ROAD.setup, 'accelerating');
    if (!open.ok) throw new Error(open.reason);
    expect([throttleIsClosed(open), closedThrottleRise(open)]).toEqual([false, null]);
  });

  it.each([
    [{ ...closed, acceleration: 0.2 }, 'throttleOpenAndClosed'],
    [{ ...closed, engineBraking: -0.1 }, 'throttleOpenAndClosed'],
    [{ ...closed, engineBraking: NaN }, 'inputNotANumber'],
  ])('refuses what no hand can do', (forces, reason) => {
    expect(balance(bike, forces)).toMatchObject({ ok: false, reason });
  });
});
