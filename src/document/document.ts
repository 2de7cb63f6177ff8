/** The saved document: a bike, its setup, and the pair that everything is compared with. */
import type { Bike } from '../core/chassis/bike.ts';
import type { Setup } from '../core/chassis/setup.ts';

export const FORMAT = 'sidestance-bike';
/** The schema this program writes. A change of meaning raises it and adds a migration. */
export const SCHEMA = 2;

/** A bike with its dials as set. */
export interface Dialled {
  readonly bike: Bike;
  readonly setup: Setup;
}

/** Inputs only: everything that is computed is computed anew. Lengths in mm, …Deg in degrees, masses in kg. */
export interface BikeDocument extends Dialled {
  readonly format: typeof FORMAT;
  readonly schema: typeof SCHEMA;
  readonly baseline: Dialled;
}

/** A document whose baseline is the bike as it is. */
export function newDocument(bike: Bike, setup: Setup): BikeDocument {
  return { format: FORMAT, schema: SCHEMA, bike, setup, baseline: { bike, setup } };
}
