/** The bike on its springs with nobody and nothing on it. */
import { AT_REST } from '../equilibrium/ride-forces.ts';
import type { RideState } from './ride-state.ts';

export const noRider = {
  key: 'noRider',
  formerly: 'bikeAlone',
  label: 'No rider',
  group: 'standing',
  springsCarry: true,
  loadCase: () => ({ kind: 'equilibrium', forces: AT_REST, carries: false, rolls: false, setBy: {} }),
  weighed: 'As it sits with no rider',
} as const satisfies RideState;
