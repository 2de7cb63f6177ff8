/** The states in which a bike is read: hanging on its springs, or with the travel that was dialled. */
import type { Setup } from '../chassis/setup.ts';
import type { Travel } from './stance.ts';

export type RideState = 'toppedOut' | 'asDialled';

export const RIDE_STATES: readonly RideState[] = ['toppedOut', 'asDialled'];

/** Travel used at both ends in a ride state, mm. */
export function travelIn(state: RideState, setup: Setup): Travel {
  return state === 'toppedOut'
    ? { front: 0, rear: 0 }
    : { front: setup.frontTravelUsed, rear: setup.rearTravelUsed };
}
