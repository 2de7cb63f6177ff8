/** The demonstration bikes, whose every figure is made up and measured on no motorcycle: files like any other. */
import longTravel from './demo-long-travel.json' with { type: 'json' };
import roadSport from './demo-road-sport.json' with { type: 'json' };
import trackDay from './demo-track-day.json' with { type: 'json' };
import roadster from './demo-twin-shock-roadster.json' with { type: 'json' };
import type { BikeDocument } from './document.ts';
import { openJson } from './open-document.ts';

/** The invented bikes that the program opens with, the first one first. What a file leaves out takes its default. */
export const DEMO_BIKES: readonly BikeDocument[] = [roadSport, trackDay, roadster, longTravel].flatMap(
  (file) => {
    const opened = openJson(file);
    return opened.ok ? [opened.value.document] : [];
  },
);
