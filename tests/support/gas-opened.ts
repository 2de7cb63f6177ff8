/** What opening the gas does to a bike that rolls evenly, upright or leaned. */
import type { NoEquilibrium } from '../../src/core/standing/no-equilibrium.ts';
import { rideChange, type RideChange } from '../../src/core/riding/ride-changes.ts';
import { AT_REST, type RideForces } from '../../src/core/riding/equilibrium/ride-forces.ts';
import type { SprungMachine } from '../../src/core/springs/sprung-machine.ts';

/**
 * Squat (+) or lift (−) of the rear, and rise of the front, in mm, when the gas is opened in a corner at `lean`
 * radians from rolling evenly to `acceleration` g.
 */
export function gasOpened(
  sprung: SprungMachine,
  lean: number,
  acceleration: number,
  drag: RideForces['drag'] = null,
): RideChange | NoEquilibrium {
  const rolling: RideForces = { ...AT_REST, lean, drag };
  return rideChange(sprung, rolling, { ...rolling, acceleration });
}
