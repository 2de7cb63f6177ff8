/** The swingarms of the demonstration bikes, by their names. */
import type { Swingarm } from '../../src/core/parts/bike.ts';
import { DEMO_BIKES } from '../../src/document/demos/demo-bikes.ts';

export const DEMO_ARMS: readonly (readonly [string, Swingarm])[] = DEMO_BIKES.map(({ bike }) => [
  bike.name,
  bike.swingarm,
]);
