/** All ride states, in the order in which they are shown. */
import type { Setup } from '../../adjusters/setup.ts';
import { accelerating } from './accelerating-state.ts';
import { braking } from './braking-state.ts';
import type { LoadCase } from './load-case.ts';
import { midCorner } from './mid-corner-state.ts';
import { noRider } from './no-rider-state.ts';
import type { RideState } from './ride-state.ts';
import { riderUp } from './rider-up-state.ts';
import { throttleClosed } from './throttle-closed-state.ts';
import { toppedOut } from './topped-out-state.ts';
import { travelByHand } from './travel-by-hand-state.ts';

const LIST = [
  noRider,
  riderUp,
  accelerating,
  throttleClosed,
  braking,
  midCorner,
  toppedOut,
  travelByHand,
] as const;

export type RideStateKey = (typeof LIST)[number]['key'];

export const RIDE_STATES: readonly (RideState & { readonly key: RideStateKey })[] = LIST;

const BY_KEY = Object.fromEntries(LIST.map((state) => [state.key, state])) as Readonly<
  Record<RideStateKey, RideState>
>;

export function rideStateOf(key: RideStateKey): RideState {
  return BY_KEY[key];
}

/** What the adjusters say of a ride state. */
export function loadCase(key: RideStateKey, setup: Setup): LoadCase {
  return BY_KEY[key].loadCase(setup);
}
