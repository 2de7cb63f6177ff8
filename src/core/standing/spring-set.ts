/** The springs of a bike as a mechanic writes them down: fork legs and shock, each with its ends. */

import type { Bike, SpringEnds } from '../parts/bike.ts';
import type { Setup } from '../adjusters/setup.ts';
import { tableStroke } from '../linkage/rear-suspension.ts';

/** A rubber or an oil lock that only works in the last part of the travel. */
export interface BumpStop {
  /** Where it begins, mm: fork travel used, or shock stroke used. */
  readonly startsAt: number;
  /** Its force when pressed all the way, over its depth then, N/mm, one leg's or one shock's. */
  readonly rate: number;
  /** 1 for a straight rate; more stiffens toward the end (an oil lock 2 to 3): force as depth to this power. */
  readonly exponent: number;
}

/** A short spring that holds the end back as it extends. */
export interface TopOutSpring {
  /** How much of the travel, from full extension, it works in, mm. */
  readonly length: number;
  /** N/mm, one leg's or one shock's. */
  readonly rate: number;
}

/** One coil spring and what works beside it: of one fork leg, or of one shock. */
export interface Coil {
  /** N/mm. */
  readonly rate: number;
  /** How far the spring is pressed at full extension, mm; below zero it is loose by so much. */
  readonly preload: number;
  /** How far the spring can be pressed before its coils touch, mm; null when not known. */
  readonly springTravel: number | null;
  readonly topOut: TopOutSpring | null;
  readonly bump: BumpStop | null;
}

export interface ForkSprings extends Coil {
  /** Legs that hold such a spring: 2, or 1 where the other leg only damps. */
  readonly legs: number;
}

export interface ShockSprings extends Coil {
  /** Shocks that share the load: 1, or 2 side by side. */
  readonly shocks: number;
  /** Eye to eye extended and pressed together, mm; their difference is the shock's stroke. */
  readonly fullLength: number;
  readonly closedLength: number;
}

export interface SpringSet {
  readonly fork: ForkSprings;
  readonly shock: ShockSprings;
}

/** The springs of a bike with its adjusters set. A table's shock has no lengths: its stroke is that of the table's travel. */
export function springSetOf(bike: Bike, setup: Setup): SpringSet {
  const { fork, shock, swingarm } = bike;
  const { links, travelTable } = swingarm;
  const stroke = tableStroke(travelTable);
  return {
    // Field by field: a sweep over an adjuster makes hundreds of these, and copying objects was a tenth of what that cost.
    fork: {
      rate: setup.forkSpringRate,
      preload: setup.forkPreload,
      springTravel: fork.ends.springTravel,
      topOut: topOutOf(fork.ends),
      bump: bumpOf(fork.ends),
      legs: fork.springLegs,
    },
    shock: {
      rate: setup.shockSpringRate,
      preload: setup.shockPreload,
      springTravel: shock.ends.springTravel,
      topOut: topOutOf(shock.ends),
      bump: bumpOf(shock.ends),
      shocks: shock.count,
      fullLength: links === null ? stroke : links.shock.fullLength,
      closedLength: links === null ? 0 : links.shock.closedLength,
    },
  };
}

function topOutOf({ topOutLength, topOutRate }: SpringEnds): TopOutSpring | null {
  return topOutLength === null ? null : { length: topOutLength, rate: topOutRate };
}

function bumpOf({ bumpStart, bumpRate, bumpExponent }: SpringEnds): BumpStop | null {
  return bumpStart === null ? null : { startsAt: bumpStart, rate: bumpRate, exponent: bumpExponent };
}
