/** The bike with its throttle closed: the engine brakes through the lower run, with brakes and lean on top. */
import { radians } from '../../units/convert.ts';
import { throttleClosedForces } from '../equilibrium/ride-forces.ts';
import type { RideState } from './ride-state.ts';

export const throttleClosed = {
  key: 'throttleClosed',
  label: 'Throttle closed',
  group: 'riding',
  springsCarry: true,
  loadCase: (setup) => ({
    kind: 'equilibrium',
    forces: throttleClosedForces(
      {
        engine: setup.engineDeceleration,
        brakes: setup.closedBraking,
        lean: radians(setup.closedLeanDeg),
      },
      setup,
    ),
    carries: true,
    rolls: true,
    setBy: {
      rearLifts: setup.closedBraking > 0 ? 'closedBraking' : 'engineDeceleration',
      leanImpossible: 'closedLeanDeg',
    },
  }),
  cornerPart: 0.25,
} as const satisfies RideState;
