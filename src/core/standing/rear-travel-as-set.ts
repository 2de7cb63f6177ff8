/** How far the rear wheel of a bike can rise as it is set: where travel used and the curves over travel end. */
import type { Setup } from '../adjusters/setup.ts';
import { rearWheelTravel } from '../linkage/rear-wheel-travel.ts';
import type { Bike } from '../parts/bike.ts';
import { machine } from './machine.ts';

/**
 * Rise of the axle from hanging to the end of the travel, mm, square to the ground with the frame held; axle, shock, shim,
 * rod and eccentric as set, the axle where the named chain puts it. Parts that make no bike have the travel they have
 * as delivered.
 */
export function rearTravelAsSet(bike: Bike, setup: Setup): number {
  const made = machine(bike, setup);
  return made.ok ? made.rear.wheelTravel : rearWheelTravel(bike.swingarm);
}
