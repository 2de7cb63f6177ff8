/** Invented springs for the plain bike, and the plain bike standing on them. */
import type { Bike } from '../../src/core/parts/bike.ts';
import type { Setup } from '../../src/core/adjusters/setup.ts';
import type { RearBrake } from '../../src/core/standing/rear-brake.ts';
import type { ForkSprings, ShockSprings, SpringSet } from '../../src/core/standing/spring-set.ts';
import { sprungMachine, type SprungMachine } from '../../src/core/springs/sprung-machine.ts';
import { plainBike, plainSetup } from './plain-bike.ts';
import { made } from './standing.ts';

export const plainSprings: SpringSet = {
  fork: {
    legs: 2,
    rate: 9.5,
    preload: 14,
    springTravel: null,
    topOut: null,
    bump: null,
    spring: { kind: 'oneRate' },
    air: null,
    otherLeg: null,
  },
  shock: {
    shocks: 1,
    rate: 95,
    preload: 9,
    springTravel: null,
    fullLength: 330,
    closedLength: 262,
    topOut: null,
    bump: null,
    spring: { kind: 'oneRate' },
    air: null,
  },
};

export function withForkSprings(fork: Partial<ForkSprings>, springs = plainSprings): SpringSet {
  return { ...springs, fork: { ...springs.fork, ...fork } };
}

export function withShock(shock: Partial<ShockSprings>, springs = plainSprings): SpringSet {
  return { ...springs, shock: { ...springs.shock, ...shock } };
}

/** The bike on its springs, which stops with the reason when it cannot be. */
export function sprung(
  springs: SpringSet = plainSprings,
  bike: Bike = plainBike,
  setup: Setup = plainSetup,
  brake: RearBrake = { caliper: 'onArm' },
): SprungMachine {
  const result = sprungMachine(made(bike, setup), springs, brake);
  if (!result.ok) throw new Error(`These springs do not fit: ${JSON.stringify(result)}`);
  return result;
}

/** The value of an outcome that has one; stops with the reason otherwise. */
export function reached<T extends { readonly ok: boolean }>(outcome: T): Extract<T, { readonly ok: true }> {
  if (!outcome.ok) throw new Error(`No answer: ${JSON.stringify(outcome)}`);
  return outcome as Extract<T, { readonly ok: true }>;
}
