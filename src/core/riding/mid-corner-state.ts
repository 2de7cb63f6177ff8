/** The bike leaned over in a corner, on gas or brake as the rider has them there. */
import { radians } from '../units/convert.ts';
import { dragOf } from './ride-forces.ts';
import type { RideState } from './ride-state.ts';

export const midCorner = {
  key: 'midCorner',
  label: 'Mid-corner',
  group: 'riding',
  springsCarry: true,
  loadCase: (setup) => ({
    kind: 'equilibrium',
    forces: {
      acceleration: setup.cornerAcceleration,
      lean: radians(setup.leanDeg),
      frontBrakeShare: setup.brakeFrontShare / 100,
      drag: dragOf(setup),
    },
    carries: true,
    rolls: true,
    setBy: { frontLifts: 'cornerAcceleration', rearLifts: 'cornerAcceleration' },
  }),
  cornerPart: 0.5,
} as const satisfies RideState;
