/** The bike on the gas, upright: where a corner ends. */
import { AT_REST, dragOf } from '../equilibrium/ride-forces.ts';
import type { RideState } from './ride-state.ts';

export const accelerating = {
  key: 'accelerating',
  formerly: 'onGas',
  label: 'Accelerating',
  group: 'riding',
  springsCarry: true,
  loadCase: (setup) => ({
    kind: 'equilibrium',
    forces: { ...AT_REST, acceleration: setup.acceleration, drag: dragOf(setup) },
    carries: true,
    rolls: true,
    setBy: { frontLifts: 'acceleration', rearLifts: 'acceleration' },
  }),
  cornerPart: 1,
} as const satisfies RideState;
