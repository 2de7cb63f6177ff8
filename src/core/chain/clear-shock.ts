/** The longest shock with which the chain stays clear of the guide over the pivot. */
import { adjusterOf } from '../adjusters/all-adjusters.ts';
import { doesApply } from '../adjusters/does-apply.ts';
import type { Setup } from '../adjusters/setup.ts';
import type { Bike } from '../parts/bike.ts';
import { adjusterRange } from '../standing/adjuster-range.ts';
import { loopOf } from '../standing/chain-of.ts';
import { machine } from '../standing/machine.ts';
import { CLEAR_BY, guideClearance } from './guide-clearance.ts';

/** A shock length and how near the chain comes to the guide with it, mm. */
export interface ClearShock {
  /** Longer (+) or shorter (−) than as delivered. */
  readonly shockLength: number;
  readonly leastGap: number;
}

/** Rounding of a number of steps. */
const ROUNDING = 1e-9;
/** Places through the travel at which a shock is tried. */
const PLACES = 21;

/**
 * The longest shock that takes the chain off its guide, in whole steps of its adjuster. With it the upper run
 * stays clear of the guide by CLEAR_BY through the whole travel, because the wheel hangs less deep. Sprockets and axle
 * stay. Null when the shortest shock that the adjuster offers is not enough, when the longest is still clear, or when there
 * is no such adjuster.
 */
export function longestClearShock(bike: Bike, setup: Setup): ClearShock | null {
  const adjuster = adjusterOf('shockLength');
  if (!doesApply(adjuster, bike, setup)) return null;
  const { least, most, step } = adjusterRange(adjuster, bike, setup);
  const loop = loopOf(bike.drive, setup.frontTeeth, setup.rearTeeth);
  const shorterBy = (steps: number): ClearShock | null => {
    const shockLength = Number((setup.shockLength - steps * step).toFixed(6));
    const made = machine(bike, { ...setup, shockLength });
    if (!made.ok) return null;
    const clearance = guideClearance(made, loop, PLACES);
    return clearance.ok && clearance.leastGap >= CLEAR_BY
      ? { shockLength, leastGap: clearance.leastGap }
      : null;
  };
  const longest = Math.floor((most - setup.shockLength) / step + ROUNDING);
  let touching = -Math.max(0, longest);
  if (shorterBy(touching) !== null) return null;
  let clear = Math.max(0, Math.floor((setup.shockLength - least) / step + ROUNDING));
  let found = shorterBy(clear);
  if (found === null) return null;
  while (clear - touching > 1) {
    const middle = Math.floor((clear + touching) / 2);
    const tried = shorterBy(middle);
    if (tried === null) touching = middle;
    else [clear, found] = [middle, tried];
  }
  return found;
}
