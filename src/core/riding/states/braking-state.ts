/** The bike on its brakes, upright: where a corner begins. */
import { dragOf } from '../equilibrium/ride-forces.ts';
import type { RideState } from './ride-state.ts';

export const braking = {
  key: 'braking',
  formerly: 'onBrakes',
  label: 'Braking',
  group: 'riding',
  springsCarry: true,
  loadCase: (setup) => ({
    kind: 'equilibrium',
    forces: {
      acceleration: -setup.braking,
      lean: 0,
      frontBrakeShare: setup.brakeFrontShare / 100,
      drag: dragOf(setup),
    },
    carries: true,
    rolls: true,
    setBy: { frontLifts: 'braking', rearLifts: 'braking' },
  }),
  cornerPart: 0,
} as const satisfies RideState;
