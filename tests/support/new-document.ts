/** Documents for tests: a bike and a setup that nothing has changed yet. */
import type { Setup } from '../../src/core/adjusters/setup.ts';
import type { Bike } from '../../src/core/parts/bike.ts';
import { FORMAT, SCHEMA, type BikeDocument } from '../../src/document/document.ts';

/** A document whose baseline is the bike as it is. */
export function newDocument(bike: Bike, setup: Setup): BikeDocument {
  return { format: FORMAT, schema: SCHEMA, bike, setup, baseline: { bike, setup } };
}
