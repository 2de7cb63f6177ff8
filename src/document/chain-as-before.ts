/** Whether hands were on the chain since the baseline. */
import { haveSameFigures } from '../core/parts/same-figures.ts';
import type { BikeDocument } from './document.ts';

/** What hands on the chain change; a chain that is named places the axle anew with every change. */
const ON_CHAIN = ['frontTeeth', 'rearTeeth', 'axlePosition', 'chainSlack'] as const;

/**
 * Whether the chain is the one of the baseline, left as it was: a longer shock does not pull at it, and slack is set anew
 * only where hands are on it.
 */
export function isChainAsBefore({ bike, setup, baseline }: BikeDocument): boolean {
  return (
    setup.chainLinks === null &&
    ON_CHAIN.every((key) => setup[key] === baseline.setup[key]) &&
    haveSameFigures(bike, baseline.bike)
  );
}
