/** What a mechanic can change on a rear suspension without moving a mount on the drawing. */
import type { PartSetup } from '../adjusters/machine-part-adjusters.ts';

/**
 * All in mm. A shock longer (+) than as delivered, eye to eye, keeps its stroke and raises the rear. A shim between the
 * bracket and the shock's mount away from the rocker (on the frame, without a rocker) moves that mount along the shock, as
 * drawn, toward the other eye: thicker raises the rear. A rod is longer (+) or shorter (−) than as drawn. An eccentric
 * moves the pivot in the frame. The axle lies back from the front end of its slot.
 */
export type RearAdjusters = PartSetup<'rear'>;

export const AS_DELIVERED: RearAdjusters = {
  shockLength: 0,
  shockMountShim: 0,
  linkLength: 0,
  pivotForward: 0,
  pivotUp: 0,
  axlePosition: 0,
};
