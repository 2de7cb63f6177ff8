/** Plain bikes whose springs are known: one like a road bike, one with long travel, one with real links. */
import type { Bike } from '../../src/core/parts/bike.ts';
import type { Setup } from '../../src/core/adjusters/setup.ts';
import { linkedBike } from './linked-bike.ts';
import { plainBike, plainSetup, withFork } from './plain-bike.ts';

export interface Sprung {
  readonly bike: Bike;
  readonly setup: Setup;
}

export const SPRUNG_ROAD: Sprung = {
  bike: plainBike,
  setup: {
    ...plainSetup,
    forkSpringRate: 10,
    forkPreload: 15,
    shockSpringRate: 110,
    shockPreload: 12,
    braking: 0.7,
    brakeFrontShare: 90,
  },
};

export const SPRUNG_BIKES: readonly Sprung[] = [
  SPRUNG_ROAD,
  {
    bike: withFork(plainBike, { length: 800, travel: 200 }),
    setup: { ...SPRUNG_ROAD.setup, forkSpringRate: 6.5, shockSpringRate: 90, riderMass: 95, dragForce: 150 },
  },
  { bike: linkedBike, setup: SPRUNG_ROAD.setup },
];
