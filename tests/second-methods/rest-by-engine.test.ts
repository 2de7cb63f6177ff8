/** The equilibrium against a general rigid-body engine that settles the same bike, which shares no formula with it. */
import { describe, expect, it } from 'vitest';
import { balance } from '../../src/core/riding/equilibrium/equilibrium.ts';
import { alone } from '../../src/core/riding/loads.ts';
import { AT_REST, type RideForces } from '../../src/core/riding/equilibrium/ride-forces.ts';
import type { SprungMachine } from '../../src/core/springs/sprung-machine.ts';
import { stance } from '../../src/core/standing/stance.ts';
import { settledByEngine, type EngineForces } from '../support/engine-bike.ts';
import { plainSprings, reached, sprung } from '../support/plain-springs.ts';
import { shockBike, shockSetup } from '../support/shock-bike.ts';

/** The engine's slop is a hundredth of a millimetre; travel of 20 to 90 mm agrees within that, mm. */
const CLOSE = 0.01;
/** What has settled moves no faster than this, m/s. */
const STILL = 1e-4;

const bike = sprung(plainSprings, shockBike, shockSetup);
const still: EngineForces = { acceleration: 0, pressed: 1, held: 'nothing' };

/** How far engine and equilibrium are apart in travel, the engine begun some way off. */
function apart(
  made: SprungMachine,
  forces: RideForces,
  engine: EngineForces,
): { front: number; rear: number } {
  const rest = reached(balance(made, forces));
  expect(rest.front.rest).toBe('onSprings');
  expect(rest.rear.rest).toBe('onSprings');
  const { front, rear } = rest.stance.travel;
  const start = reached(stance(made.machine, { front: front * 0.8 + 10, rear: rear * 0.8 + 8 }));
  const settled = settledByEngine(start, plainSprings, engine);
  expect(settled.speed).toBeLessThan(STILL);
  return { front: Math.abs(settled.travel.front - front), rear: Math.abs(settled.travel.rear - rear) };
}

function expectClose({ front, rear }: { front: number; rear: number }): void {
  expect(front).toBeLessThan(CLOSE);
  expect(rear).toBeLessThan(CLOSE);
}

describe('a rigid-body engine settles at the equilibrium', () => {
  it('for the bike alone', () => {
    expectClose(apart(alone(bike), AT_REST, still));
  });

  it('with the rider up', () => {
    expectClose(apart(bike, AT_REST, still));
  });

  it('on the gas, driven by its chain', () => {
    const forces = { ...AT_REST, acceleration: 0.4 };
    expectClose(apart(bike, forces, { acceleration: 0.4, pressed: 1, held: 'chain' }));
  });

  it('with the throttle closed, held by its lower run', () => {
    const forces = { ...AT_REST, acceleration: -0.25, engineBraking: 0.25, slowedByDrag: 1 };
    expectClose(apart(bike, forces, { acceleration: -0.25, pressed: 1, held: 'closedThrottle' }));
  });

  it('on the front brake', () => {
    const forces = { ...AT_REST, acceleration: -0.4, frontBrakeShare: 1 };
    expectClose(apart(bike, forces, { acceleration: -0.4, pressed: 1, held: 'frontBrake' }));
  });

  it('on the rear brake with the caliper on the arm', () => {
    const forces = { ...AT_REST, acceleration: -0.3, frontBrakeShare: 0 };
    expectClose(apart(bike, forces, { acceleration: -0.3, pressed: 1, held: 'rearBrake' }));
  });

  it('on the gas in mid-corner, with the weight that a lean gives in the bike’s plane', () => {
    const lean = 0.7;
    const forces = { ...AT_REST, acceleration: 0.25, lean };
    expectClose(apart(bike, forces, { acceleration: 0.25, pressed: 1 / Math.cos(lean), held: 'chain' }));
  });
});
