/** The bike standing still on its springs with its rider, passenger and load. */
import { AT_REST } from '../equilibrium/ride-forces.ts';
import type { RideState } from './ride-state.ts';

export const riderUp = {
  key: 'riderUp',
  label: 'Rider on board',
  group: 'standing',
  springsCarry: true,
  loadCase: () => ({ kind: 'equilibrium', forces: AT_REST, carries: true, rolls: false, setBy: {} }),
} as const satisfies RideState;
