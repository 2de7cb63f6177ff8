/** Preferences of someone who chose a ride state before, for tests that stand a bike in it. */
import { Preferences } from '../../src/session/preferences.svelte.ts';
import type { RideStateKey } from '../../src/core/riding/states/all-ride-states.ts';

export function readIn(state: RideStateKey): Preferences {
  const preferences = new Preferences();
  preferences.change({ rideState: state });
  return preferences;
}
