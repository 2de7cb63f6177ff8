/** The demonstration bikes, whose every figure is made up and measured on no motorcycle: files like any other. */
import longTravel from './demo-long-travel.json' with { type: 'json' };
import trackDay from './demo-track-day.json' with { type: 'json' };
import roadster from './demo-twin-shock-roadster.json' with { type: 'json' };
import type { BikeDocument } from '../document.ts';
import { FIRST_DEMO } from './first-demo.ts';
import { openDemos } from './open-demos.ts';

/** The one that the program opens with, then the others. */
export const DEMO_BIKES: readonly BikeDocument[] = [
  FIRST_DEMO,
  ...openDemos([trackDay, roadster, longTravel]),
];
