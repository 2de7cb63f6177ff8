/** The corner sequence from braking through the corner to its exit: every place between the three ride states as a case of its own. */
import type { Setup } from '../adjusters/setup.ts';
import type { LoadCase } from './load-case.ts';
import { loadCase, type RideState } from './ride-state.ts';

/** The places of the corner sequence that are ride states, as parts of the whole way. */
export const CORNER_PLACES: readonly { readonly part: number; readonly state: RideState }[] = [
  { part: 0, state: 'braking' },
  { part: 0.5, state: 'midCorner' },
  { part: 1, state: 'accelerating' },
];

/**
 * What the rider asks of the bike at a part of the corner sequence, 0 to 1: braking upright, then lean in and brake off evenly
 * to the corner's own lean and gas, then upright and on the gas evenly. The three named places are those states
 * themselves, from the same adjusters. A part outside 0 to 1 counts as the nearer end.
 */
export function cornerSequenceCase(part: number, setup: Setup): LoadCase {
  const at = Math.min(1, Math.max(0, part));
  const named = CORNER_PLACES.find((place) => place.part === at);
  if (named !== undefined) return loadCase(named.state, setup);
  const corner = loadCase('midCorner', setup);
  // The two ways' other ends have no lean, which leaves its share of the corner's lean to each place between.
  const outside = at < 0.5 ? -setup.brake : setup.gas;
  const into = 1 - Math.abs(2 * at - 1);
  if (corner.kind !== 'midCorner') return corner;
  return {
    ...corner,
    lean: corner.lean * into,
    acceleration: outside + (corner.acceleration - outside) * into,
  };
}
