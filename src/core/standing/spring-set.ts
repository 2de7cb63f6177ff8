/** The springs of a bike as a mechanic writes them down: fork legs and shock, each with its ends. */

import type { Bike, SpringEnds } from '../parts/bike.ts';
import type { Air, MainSpring, OtherLeg } from '../parts/support.ts';
import { NEWTON_A_SQUARE_MM_PER_BAR } from '../units/convert.ts';
import type { PartSetup } from '../adjusters/machine-part-adjusters.ts';
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

/** Air as it is filled in. Pressures are those above the air outside, N/mm²; volumes are in mm³. */
export interface FilledAir {
  readonly bore: number;
  readonly slidingTube: number;
  readonly exponent: number;
  readonly steelVolume: number;
  /** mm, fully compressed. */
  readonly gap: number;
  readonly pressure: number;
  readonly balance: {
    readonly volume: number;
    readonly bore: number;
    readonly rod: number;
    readonly pressure: number;
  } | null;
}

/** The main spring of one leg or one shock, and its air. */
export interface MainSupport {
  /** N/mm: of a spring with two stages the first. */
  readonly rate: number;
  /** How far the spring is pressed at full extension, mm; below zero it is loose by so much. */
  readonly preload: number;
  /** How far the spring can be pressed before its coils touch, mm; null when not known. */
  readonly springTravel: number | null;
  readonly spring: MainSpring;
  readonly air: FilledAir | null;
}

/** One main spring and what works beside it: of one fork leg, or of one shock. */
export interface Coil extends MainSupport {
  readonly topOut: TopOutSpring | null;
  readonly bump: BumpStop | null;
}

export interface ForkSprings extends Coil {
  /** Legs that hold such a spring: 2, or 1 where the other leg only damps. */
  readonly legs: number;
  /** What the other leg holds instead of the same; the legs are two then. Top-out spring and bump stop are in both. */
  readonly otherLeg: MainSupport | null;
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

const ONE_RATE: MainSpring = { kind: 'oneRate' };
const MM3_PER_ML = 1000;

/** The springs of a bike with its adjusters set. A table's shock has no lengths: its stroke is that of the table's travel. */
export function springSetOf(bike: Bike, setup: PartSetup<'springs'>): SpringSet {
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
      legs: fork.otherLeg === null ? fork.springLegs : 2,
      spring: fork.support === null ? ONE_RATE : fork.support.spring,
      air: filledAir(fork.support, setup.forkAirGap, setup.forkAirPressure),
      otherLeg: otherLegOf(fork.otherLeg),
    },
    shock: {
      rate: setup.shockSpringRate,
      preload: setup.shockPreload,
      springTravel: shock.ends.springTravel,
      topOut: topOutOf(shock.ends),
      bump: bumpOf(shock.ends),
      spring: shock.support === null ? ONE_RATE : shock.support.spring,
      air: filledAir(shock.support, setup.shockAirGap, setup.shockAirPressure),
      shocks: shock.count,
      fullLength: links === null ? stroke : links.shock.fullLength,
      closedLength: links === null ? 0 : links.shock.closedLength,
    },
  };
}

function filledAir(
  support: { readonly air: Air | null } | null,
  gap: number,
  pressure: number,
): FilledAir | null {
  if (support === null || support.air === null) return null;
  const { bore, slidingTube, exponent, steelVolume, balance } = support.air;
  return {
    bore,
    slidingTube,
    exponent,
    steelVolume: steelVolume * MM3_PER_ML,
    gap,
    pressure: pressure * NEWTON_A_SQUARE_MM_PER_BAR,
    balance:
      balance === null
        ? null
        : {
            volume: balance.volume * MM3_PER_ML,
            bore: balance.bore,
            rod: balance.rod,
            pressure: balance.pressure * NEWTON_A_SQUARE_MM_PER_BAR,
          },
  };
}

function otherLegOf(leg: OtherLeg | null): MainSupport | null {
  if (leg === null) return null;
  const { rate, preload, springTravel, spring } = leg;
  return { rate, preload, springTravel, spring, air: filledAir(leg, leg.airGap, leg.airPressure) };
}

function topOutOf({ topOutLength, topOutRate }: SpringEnds): TopOutSpring | null {
  return topOutLength === null ? null : { length: topOutLength, rate: topOutRate };
}

function bumpOf({ bumpStart, bumpRate, bumpExponent }: SpringEnds): BumpStop | null {
  return bumpStart === null ? null : { startsAt: bumpStart, rate: bumpRate, exponent: bumpExponent };
}
