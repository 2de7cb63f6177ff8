/** The saved document: a bike, its setup, and the pair that everything is compared with. */
import type { Bike } from '../core/parts/bike.ts';
import type { Setup } from '../core/adjusters/setup.ts';
import type { KeptMeasure } from './measure.ts';

export const FORMAT = 'sidestance-bike';
/** The schema this program writes. A change of meaning raises it and adds a migration. */
export const SCHEMA = 4;

/** A bike with its adjusters as set. */
export interface BikeWithSetup {
  readonly bike: Bike;
  readonly setup: Setup;
}

/** What everything is compared with; `name` says where it comes from, such as a setup sheet. */
export interface Baseline extends BikeWithSetup {
  readonly name?: string;
}

/** Inputs only: everything that is computed is computed anew. Lengths in mm, …Deg in degrees, masses in kg. */
export interface BikeDocument extends BikeWithSetup {
  readonly format: typeof FORMAT;
  readonly schema: typeof SCHEMA;
  readonly baseline: Baseline;
  /** What the bike was measured by; left out where nothing was. */
  readonly measure?: KeptMeasure;
}
