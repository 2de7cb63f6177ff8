/** The plain bike with real rear links in place of its table, and with springs. */
import type { Bike } from '../../src/core/parts/bike.ts';
import type { Setup } from '../../src/core/adjusters/setup.ts';
import { plainBike, plainSetup, withSwingarm } from './plain-bike.ts';
import { rockerOnArm } from './rear-layouts.ts';

export const linkedBike: Bike = withSwingarm(plainBike, { links: rockerOnArm });

export const sprungSetup: Setup = {
  ...plainSetup,
  forkSpringRate: 10,
  forkPreload: 12,
  shockSpringRate: 105,
  shockPreload: 10,
};
