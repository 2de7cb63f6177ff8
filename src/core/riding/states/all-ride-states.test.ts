/** Tests of the ride states. */
import { describe, expect, it } from 'vitest';
import { plainSetup } from '../../../../tests/support/plain-bike.ts';
import { radians } from '../../units/convert.ts';
import { loadCase, RIDE_STATES } from './all-ride-states.ts';
import { AT_REST } from '../equilibrium/ride-forces.ts';
import { RIDE_GROUPS } from './ride-state.ts';

describe('a ride state', () => {
  it('takes from the setup what it is ridden with', () => {
    const setup = {
      ...plainSetup,
      frontTravelUsed: 33,
      rearTravelUsed: 44,
      acceleration: 0.4,
      braking: 0.8,
      brakeFrontShare: 70,
      leanDeg: 45,
      cornerBraking: 0.1,
      engineDeceleration: 0.12,
      closedBraking: 0.3,
      closedLeanDeg: 20,
    };
    expect(loadCase('travelByHand', setup)).toMatchObject({ travel: { front: 33, rear: 44 } });
    expect(loadCase('accelerating', setup)).toMatchObject({ forces: { ...AT_REST, acceleration: 0.4 } });
    expect(loadCase('braking', setup)).toMatchObject({
      forces: { acceleration: -0.8, lean: 0, frontBrakeShare: 0.7, drag: null },
    });
    expect(loadCase('throttleClosed', setup)).toMatchObject({
      forces: {
        acceleration: -0.42,
        engineBraking: 0.12,
        slowedByDrag: 1,
        lean: radians(20),
        frontBrakeShare: 0.7,
      },
    });
    expect(
      loadCase('midCorner', { ...setup, cornerBraking: 0, cornerEngineDeceleration: 0.1 }),
    ).toMatchObject({
      forces: { acceleration: -0.1, engineBraking: 0.1, slowedByDrag: 1, lean: radians(45) },
    });
    expect(loadCase('midCorner', setup)).toMatchObject({
      forces: { acceleration: -0.1, lean: radians(45), frontBrakeShare: 0.7, drag: null },
    });
  });

  it.each(['accelerating', 'throttleClosed', 'braking', 'midCorner'] as const)(
    'feels the air when there is drag: %s',
    (key) => {
      expect(loadCase(key, { ...plainSetup, dragForce: 200, dragHeight: 700 })).toMatchObject({
        forces: { drag: { force: 200, height: 700 } },
      });
    },
  );

  it.each(RIDE_STATES)('$key says whether the springs carry it as its load case does', (state) => {
    expect(state.loadCase(plainSetup).kind === 'equilibrium').toBe(state.springsCarry);
  });

  it('has a key and a label that no other has, former keys included', () => {
    const keys = RIDE_STATES.flatMap(({ key, formerly }) =>
      formerly === undefined ? [key] : [key, formerly],
    );
    expect(new Set(keys).size).toBe(keys.length);
    expect(new Set(RIDE_STATES.map(({ label }) => label)).size).toBe(RIDE_STATES.length);
  });

  it('stands beside the others of its group', () => {
    const groups = RIDE_STATES.map(({ group }) => RIDE_GROUPS.indexOf(group));
    expect(groups).toEqual([...groups].sort((a, b) => a - b));
  });

  it.each(RIDE_STATES.filter(({ weighed }) => weighed !== undefined))(
    'a bike is weighed without its rider: $key',
    (state) => {
      const ride = state.loadCase(plainSetup);
      expect(ride.kind === 'equilibrium' && ride.carries).toBe(false);
    },
  );
});
