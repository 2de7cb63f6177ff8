/** The demonstration bike that the program opens with: apart from the others, which come after the first sight. */
import roadSport from './demo-road-sport.json' with { type: 'json' };
import type { BikeDocument } from '../document.ts';
import { openDemos } from './open-demos.ts';

export const FIRST_DEMO: BikeDocument = openDemos([roadSport])[0];
