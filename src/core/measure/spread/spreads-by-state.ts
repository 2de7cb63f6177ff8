/** How sure every reading of a measured bike is in every ride state at once, as a setup sheet keeps it. */
import type { Setup } from '../../adjusters/setup.ts';
import { RIDE_STATES } from '../../riding/states/all-ride-states.ts';
import type { Fit } from '../fit-values.ts';
import type { StartingBike } from '../held/starting-bike.ts';
import { changeSpreads } from './measured-change.ts';

/**
 * Standard deviations (1 σ) by ride state and by the reading's key, in the metric units of files, with the adjusters at
 * `to`. A reading that is not fixed is left out, and so is a state in which none is.
 */
export function spreadsByState(
  fit: Fit,
  start: StartingBike,
  to: Setup,
): Record<string, Record<string, number>> {
  return Object.fromEntries(
    RIDE_STATES.flatMap(({ key: ride }) => {
      const readings = changeSpreads(fit, { start, from: null, to, ride, stepSd: 0 });
      const fixed = Object.entries(readings).flatMap(([key, { u }]): [string, number][] =>
        u === null ? [] : [[key, u]],
      );
      return fixed.length === 0 ? [] : [[ride, Object.fromEntries(fixed)] as const];
    }),
  );
}
