/** The steady forces of a load case. */
import type { LoadCase } from '../../src/core/riding/states/load-case.ts';
import type { RideForces } from '../../src/core/riding/equilibrium/ride-forces.ts';

/** The steady forces of a case; null where the springs carry nothing. */
export function forcesIn(ride: LoadCase): RideForces | null {
  return ride.kind === 'equilibrium' ? ride.forces : null;
}
