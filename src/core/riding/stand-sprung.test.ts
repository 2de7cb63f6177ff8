/** Tests of a bike on its springs in a load case. */
import { describe, expect, it } from 'vitest';
import { reached, sprung, withForkSprings, withShock } from '../../../tests/support/plain-springs.ts';
import { balance } from './equilibrium/equilibrium.ts';
import { forcesIn } from '../../../tests/support/forces-in.ts';
import type { InEquilibrium, LoadCase } from './states/load-case.ts';
import { alone } from './loads.ts';
import { AT_REST, type RideForces } from './equilibrium/ride-forces.ts';
import { standSprung } from './stand-sprung.ts';

const bike = sprung();
const travelIn = (ride: LoadCase, made = bike) => reached(standSprung(made, ride)).stance.travel;

const under = (forces: Partial<RideForces>): InEquilibrium => ({
  kind: 'equilibrium',
  forces: { ...AT_REST, ...forces },
  carries: true,
  rolls: true,
  setBy: {},
});
const STILL = under({});
const NO_RIDER: LoadCase = { ...STILL, carries: false };
const HANGING: LoadCase = { kind: 'hanging' };
const at = (front: number, rear: number): LoadCase => ({
  kind: 'travel',
  travel: { front, rear },
  setBy: {},
});

describe('a bike', () => {
  it('topped out hangs at full extension, or where its top-out springs hold it', () => {
    expect(travelIn(HANGING)).toEqual({ front: 0, rear: 0 });
    const held = sprung(
      withForkSprings({ topOut: { length: 25, rate: 14 } }, withShock({ topOut: { length: 6, rate: 400 } })),
    );
    const { front, rear } = travelIn(HANGING, held);
    expect(front).toBeGreaterThan(1);
    expect(rear).toBeGreaterThan(0.5);
    expect(reached(standSprung(held, HANGING)).equilibrium).toBeNull();
  });

  it('alone carries neither rider nor load, and sits higher than with its rider up', () => {
    expect(travelIn(NO_RIDER)).toEqual(reached(balance(alone(bike), AT_REST)).stance.travel);
    expect(travelIn(NO_RIDER).rear).toBeLessThan(travelIn(STILL).rear);
  });

  it('on the gas rises at the front, on the brakes dives there', () => {
    const still = travelIn(STILL);
    const gas = travelIn(under({ acceleration: 0.4 }));
    const brakes = travelIn(under({ acceleration: -0.4, frontBrakeShare: 0.8 }));
    expect(gas.front).toBeLessThan(still.front - 10);
    expect(brakes.front).toBeGreaterThan(still.front + 10);
    expect(brakes.rear).toBeLessThan(still.rear);
  });

  it('in mid-corner sits lower, and can be on gas or brake there', () => {
    const corner = (acceleration: number): LoadCase => under({ lean: 0.6, acceleration });
    expect(travelIn(corner(0)).front).toBeGreaterThan(travelIn(STILL).front);
    expect(travelIn(corner(0.2)).front).toBeLessThan(travelIn(corner(0)).front);
    expect(travelIn(corner(-0.2)).front).toBeGreaterThan(travelIn(corner(0)).front);
  });

  it('at a given travel stands there, which is refused beyond the travel there is', () => {
    const given = reached(standSprung(bike, at(33, 44)));
    expect(given.stance.travel).toEqual({ front: 33, rear: 44 });
    expect(given.equilibrium).toBeNull();
    expect(standSprung(bike, at(333, 44))).toMatchObject({ reason: 'forkTravelBeyond' });
  });

  it('has steady forces only where its springs carry it', () => {
    expect(forcesIn(HANGING)).toBeNull();
    expect(forcesIn(at(0, 0))).toBeNull();
    expect(forcesIn(STILL)).toEqual(AT_REST);
  });
});
