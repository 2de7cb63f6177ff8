/** Tests of the pushes on both ends: their exact derivatives against differences of the pushes themselves. */
import { describe, expect, it } from 'vitest';
import { linkedBike } from '../../../../tests/support/linked-bike.ts';
import { plainBike, plainSetup, withFrame } from '../../../../tests/support/plain-bike.ts';
import { plainSprings, reached, sprung } from '../../../../tests/support/plain-springs.ts';
import type { Setup } from '../../adjusters/setup.ts';
import { pushesOn, type Pushes } from './pushes.ts';
import type { RearBrake } from '../../standing/rear-brake.ts';
import { AT_REST, type RideForces } from './ride-forces.ts';
import type { SpringSet } from '../../standing/spring-set.ts';
import type { SprungMachine } from '../../springs/sprung-machine.ts';
import { stance, type Travel } from '../../standing/stance.ts';
import { steadyLoads } from './steady-loads.ts';

/** Half the way between the two postures that are compared, mm: truncation and rounding both stay below 1e-5 N/mm. */
const HALF_WAY = 1e-3;

const ownStay: RearBrake = {
  caliper: 'ownStay',
  anchor: { x: -40, y: -70 },
  bracketRadius: 95,
  stayLength: 545,
  bracketSide: 'below',
};

/** Every part of both spring laws at work somewhere in the travel. */
const everySpring: SpringSet = {
  fork: {
    ...plainSprings.fork,
    topOut: { length: 25, rate: 6 },
    bump: { startsAt: 80, rate: 30, exponent: 2.5 },
  },
  shock: {
    ...plainSprings.shock,
    topOut: { length: 10, rate: 60 },
    bump: { startsAt: 40, rate: 90, exponent: 2 },
  },
};

/** Every mass that there can be. */
const laden: Setup = { ...plainSetup, passengerMass: 65, fuelMass: 12, loadMass: 25, riderForward: 40 };

const RIDDEN: readonly (readonly [string, RideForces])[] = [
  ['at rest', AT_REST],
  ['on the gas against drag', { ...AT_REST, acceleration: 0.4, drag: { force: 250, height: 650 } }],
  [
    'with the throttle closed on both brakes, against drag',
    {
      ...AT_REST,
      acceleration: -0.4,
      engineBraking: 0.15,
      slowedByDrag: 1,
      frontBrakeShare: 0.7,
      lean: 0.3,
      drag: { force: 250, height: 650 },
    },
  ],
  ['on both brakes', { ...AT_REST, acceleration: -0.5, frontBrakeShare: 0.6 }],
  ['leaned on the rear brake', { ...AT_REST, acceleration: -0.2, frontBrakeShare: 0, lean: 0.6 }],
];

function pushesAt(sprung: SprungMachine, forces: RideForces, travel: Travel): Pushes {
  const on = reached(stance(sprung.machine, travel));
  const loads = reached(steadyLoads(on, forces, sprung.brake));
  return reached(pushesOn({ sprung, stance: on, loads }));
}

describe('the change of the pushes per mm of travel', () => {
  for (const [name, forces] of RIDDEN)
    it(`equals their differences ${name}, with every spring at work and either hold of the brake`, () => {
      for (const parts of [plainBike, linkedBike, withFrame(plainBike, { lowerGuideRadius: 110 })])
        for (const brake of [{ caliper: 'onArm' } as const, ownStay]) {
          const bike = sprung(everySpring, parts, laden, brake);
          for (const front of [8, 60, 100])
            for (const rear of [6, 50, 110])
              for (const end of ['front', 'rear'] as const) {
                const travel = { front, rear };
                const exact = pushesAt(bike, forces, travel);
                const after = pushesAt(bike, forces, { ...travel, [end]: travel[end] + HALF_WAY });
                const before = pushesAt(bike, forces, { ...travel, [end]: travel[end] - HALF_WAY });
                const x = (after.pushX - before.pushX) / (2 * HALF_WAY);
                const y = (after.pushY - before.pushY) / (2 * HALF_WAY);
                const where = `by ${end} at ${front}, ${rear}`;
                expect(Math.abs((end === 'front' ? exact.xPerX : exact.xPerY) - x), where).toBeLessThan(1e-4);
                expect(Math.abs((end === 'front' ? exact.yPerX : exact.yPerY) - y), where).toBeLessThan(1e-4);
              }
        }
    });

  it('has no answer when the brake’s stay cannot reach', () => {
    const bike = sprung();
    const braking = { ...AT_REST, acceleration: -0.3, frontBrakeShare: 0 };
    const on = reached(stance(bike.machine, { front: 40, rear: 40 }));
    const loads = reached(steadyLoads(on, braking, bike.brake));
    const short: SprungMachine = { ...bike, brake: { ...ownStay, stayLength: 100 } };
    expect(pushesOn({ sprung: short, stance: on, loads })).toMatchObject({
      ok: false,
      reason: 'stayCannotClose',
    });
  });
});
