/** Tests of the ride states. */
import { describe, expect, it } from 'vitest';
import { plainSetup } from '../../../tests/support/plain-bike.ts';
import { radians } from '../units/convert.ts';
import { RIDE_STATE_WORDS, RIDE_STATES, loadCase } from './ride-state.ts';

describe('a ride state', () => {
  it('takes from the setup what it is ridden with', () => {
    const setup = {
      ...plainSetup,
      frontTravelUsed: 33,
      rearTravelUsed: 44,
      gas: 0.4,
      brake: 0.8,
      brakeFrontShare: 70,
      leanDeg: 45,
      cornerGas: -0.1,
    };
    expect(loadCase('travelByHand', setup)).toEqual({
      kind: 'travelByHand',
      travel: { front: 33, rear: 44 },
    });
    expect(loadCase('accelerating', setup)).toEqual({ kind: 'accelerating', acceleration: 0.4, drag: null });
    expect(loadCase('braking', setup)).toEqual({
      kind: 'braking',
      deceleration: 0.8,
      frontShare: 0.7,
      drag: null,
    });
    expect(loadCase('midCorner', setup)).toEqual({
      kind: 'midCorner',
      lean: radians(45),
      acceleration: -0.1,
      frontShare: 0.7,
      drag: null,
    });
  });

  it('feels the air when there is drag', () => {
    expect(loadCase('accelerating', { ...plainSetup, dragForce: 200, dragHeight: 700 })).toMatchObject({
      drag: { force: 200, height: 700 },
    });
  });

  it('is listed once and has its words', () => {
    expect([...RIDE_STATES].sort()).toEqual(Object.keys(RIDE_STATE_WORDS).sort());
  });
});
