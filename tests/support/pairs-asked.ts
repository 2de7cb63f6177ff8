/** Sprocket pairs for a test: an ordinary chain, and the pairs found for it, or an error that says why not. */
import { sprocketPairs, type PairsAsked, type SprocketPair } from '../../src/core/effects/sprocket-pairs.ts';

/** A new chain of whole links, of any length, with 30 mm of slack hanging. */
export const ANY_CHAIN = {
  leastFront: 12,
  linksInHand: null,
  rule: { halfLink: false },
  slack: 30,
  setAt: 0,
  stretchPercent: 0,
} as const;

export function pairsOf(asked: PairsAsked): readonly SprocketPair[] {
  const found = sprocketPairs(asked);
  if ('ok' in found) throw new Error(found.reason);
  return found;
}

/** The pair with these teeth among those found. */
export function pairIn(pairs: readonly SprocketPair[], front: number, rear: number): SprocketPair {
  const found = pairs.find((pair) => pair.frontTeeth === front && pair.rearTeeth === rear);
  if (found === undefined) throw new Error(`no pair ${front}/${rear}`);
  return found;
}
