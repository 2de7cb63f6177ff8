/** The bike leaned over in a corner, on the gas, with the throttle closed or on the brakes as the rider has them there. */
import type { Setup } from '../../adjusters/setup.ts';
import { radians } from '../../units/convert.ts';
import { dragOf, throttleClosedForces, type RideForces } from '../equilibrium/ride-forces.ts';
import type { RideState } from './ride-state.ts';

export const midCorner = {
  key: 'midCorner',
  label: 'Mid-corner',
  group: 'riding',
  springsCarry: true,
  loadCase: (setup) => ({
    kind: 'equilibrium',
    forces: forcesIn(setup),
    carries: true,
    rolls: true,
    setBy: {
      frontLifts: 'cornerAcceleration',
      rearLifts: setup.cornerBraking > 0 ? 'cornerBraking' : 'cornerEngineDeceleration',
      throttleOpenAndClosed: 'cornerAcceleration',
      leanImpossible: 'leanDeg',
    },
  }),
  cornerPart: 0.5,
} as const satisfies RideState;

function forcesIn(setup: Setup): RideForces {
  const { cornerAcceleration, cornerEngineDeceleration, cornerBraking } = setup;
  const lean = radians(setup.leanDeg);
  const slowing = cornerEngineDeceleration + cornerBraking;
  const closed = throttleClosedForces(
    { engine: cornerEngineDeceleration, brakes: cornerBraking, lean },
    setup,
  );
  // Both at once are refused: the forces hold them as they are set.
  if (cornerAcceleration > 0 && slowing > 0)
    return { ...closed, acceleration: cornerAcceleration, engineBraking: slowing };
  if (cornerEngineDeceleration > 0) return closed;
  return {
    acceleration: cornerAcceleration - cornerBraking,
    lean,
    frontBrakeShare: setup.brakeFrontShare / 100,
    drag: dragOf(setup),
  };
}
