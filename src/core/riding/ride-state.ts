/** The states in which a bike is read, and what each asks of its setup. */
import type { Setup } from '../adjusters/setup.ts';
import { radians } from '../units/convert.ts';
import type { LoadCase } from './load-case.ts';

export type RideState = LoadCase['kind'];

/** In the order of a ride: hanging, loaded, ridden; the travel that was set comes last. */
export const RIDE_STATES: readonly RideState[] = [
  'toppedOut',
  'noRider',
  'riderUp',
  'accelerating',
  'braking',
  'midCorner',
  'travelByHand',
];

export const RIDE_STATE_WORDS: Readonly<Record<RideState, string>> = {
  toppedOut: 'Topped out',
  noRider: 'No rider',
  riderUp: 'Rider on board',
  accelerating: 'Accelerating',
  braking: 'Braking',
  midCorner: 'Mid-corner',
  travelByHand: 'Travel set by hand',
};

/** The names that states had until lately, still written for one version. */
export const FORMER_RIDE_STATES: Readonly<Partial<Record<RideState, string>>> = {
  noRider: 'bikeAlone',
  accelerating: 'onGas',
  braking: 'onBrakes',
  travelByHand: 'asDialled',
};

/** What the adjusters say of a ride state. */
export function loadCase(state: RideState, setup: Setup): LoadCase {
  const { dragForce, dragHeight } = setup;
  const drag = dragForce === 0 ? null : { force: dragForce, height: dragHeight };
  const frontShare = setup.brakeFrontShare / 100;
  switch (state) {
    case 'toppedOut':
    case 'noRider':
    case 'riderUp':
      return { kind: state };
    case 'accelerating':
      return { kind: state, acceleration: setup.gas, drag };
    case 'braking':
      return { kind: state, deceleration: setup.brake, frontShare, drag };
    case 'midCorner':
      return { kind: state, lean: radians(setup.leanDeg), acceleration: setup.cornerGas, frontShare, drag };
    case 'travelByHand':
      return { kind: state, travel: { front: setup.frontTravelUsed, rear: setup.rearTravelUsed } };
  }
}
