/** The states in which a bike is read, and what each asks of its setup. */
import type { Setup } from '../chassis/setup.ts';
import { radians } from '../units/convert.ts';
import type { RideCase } from './ride-case.ts';

export type RideState = RideCase['kind'];

/** In the order of a ride: hanging, loaded, ridden; the travel that was dialled comes last. */
export const RIDE_STATES: readonly RideState[] = [
  'toppedOut',
  'bikeAlone',
  'riderUp',
  'onGas',
  'onBrakes',
  'midCorner',
  'asDialled',
];

export const RIDE_STATE_WORDS: Readonly<Record<RideState, string>> = {
  toppedOut: 'Topped out',
  bikeAlone: 'Bike alone',
  riderUp: 'Rider up',
  onGas: 'On the gas',
  onBrakes: 'On the brakes',
  midCorner: 'Mid-corner',
  asDialled: 'As dialled',
};

/** What the dials say of a ride state. */
export function rideCase(state: RideState, setup: Setup): RideCase {
  const { dragForce, dragHeight } = setup;
  const drag = dragForce === 0 ? null : { force: dragForce, height: dragHeight };
  const frontShare = setup.brakeFrontShare / 100;
  switch (state) {
    case 'toppedOut':
    case 'bikeAlone':
    case 'riderUp':
      return { kind: state };
    case 'onGas':
      return { kind: state, acceleration: setup.gas, drag };
    case 'onBrakes':
      return { kind: state, deceleration: setup.brake, frontShare, drag };
    case 'midCorner':
      return { kind: state, lean: radians(setup.leanDeg), acceleration: setup.cornerGas, frontShare, drag };
    case 'asDialled':
      return { kind: state, travel: { front: setup.frontTravelUsed, rear: setup.rearTravelUsed } };
  }
}
