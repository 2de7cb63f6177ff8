/** How far a rear wheel can rise with its suspension as delivered: where the adjusters of travel end. */
import type { Swingarm } from '../parts/bike.ts';
import { AS_DELIVERED } from './link-adjustments.ts';
import { rearLayout } from './rear-layout-of.ts';
import { suspension } from './suspension.ts';

/** Links are solved once for each swingarm, because the page needs the range at every step. */
const known = new WeakMap<Swingarm, number>();

/**
 * Rise of the axle from hanging to the end of the travel, mm, square to the ground with the frame held, no adjuster
 * turned. With links that do not work it is the travel stated beside them.
 */
export function rearWheelTravel(swingarm: Swingarm): number {
  const before = known.get(swingarm);
  if (before !== undefined) return before;
  const made = suspension(rearLayout(swingarm), swingarm.length, AS_DELIVERED);
  const travel = made.ok ? made.wheelTravel : swingarm.wheelTravel;
  known.set(swingarm, travel);
  return travel;
}
