/** Tests of the ride states. */
import { expect, it } from 'vitest';
import { plainSetup } from '../../../tests/support/plain-bike.ts';
import { RIDE_STATES, travelIn } from './ride-state.ts';

it('topped out uses no travel, as dialled uses what the setup says', () => {
  expect(travelIn('toppedOut', plainSetup)).toEqual({ front: 0, rear: 0 });
  expect(travelIn('asDialled', { ...plainSetup, frontTravelUsed: 33, rearTravelUsed: 44 })).toEqual({
    front: 33,
    rear: 44,
  });
});

it('each state is listed once', () => {
  expect([...RIDE_STATES].sort()).toEqual(['asDialled', 'toppedOut']);
});
