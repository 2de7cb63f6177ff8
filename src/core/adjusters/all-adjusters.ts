/** The adjusters: all that can be set, in the order of the page and of a saved file. */
import type { NumberDefinition, NumberOrNoneDefinition, TyreDefinition } from './definition/adjuster.ts';
import { acceleration } from './riding/acceleration.ts';
import { axlePosition } from './part/axle-position.ts';
import { brakeFrontShare } from './riding/brake-front-share.ts';
import { braking } from './riding/braking.ts';
import { chainLinks } from './part/chain-links.ts';
import { chainSlack } from './part/chain-slack.ts';
import { clampOffset } from './part/clamp-offset.ts';
import { closedBraking } from './riding/closed-braking.ts';
import { closedLeanDeg } from './riding/closed-lean-deg.ts';
import { cornerAcceleration } from './riding/corner-acceleration.ts';
import { cornerBraking } from './riding/corner-braking.ts';
import { cornerEngineDeceleration } from './riding/corner-engine-deceleration.ts';
import { dragForce } from './riding/drag-force.ts';
import { dragHeight } from './riding/drag-height.ts';
import { engineDeceleration } from './riding/engine-deceleration.ts';
import { forkAirGap } from './part/fork-air-gap.ts';
import { forkAirPressure } from './part/fork-air-pressure.ts';
import { forkExtenders } from './part/fork-extenders.ts';
import { forkPreload } from './part/fork-preload.ts';
import { forkSpringRate } from './part/fork-spring-rate.ts';
import { forkTubes } from './part/fork-tubes.ts';
import { frontTeeth } from './part/front-teeth.ts';
import { frontTravelUsed } from './riding/front-travel-used.ts';
import { frontTyre } from './part/front-tyre.ts';
import { fuelMass } from './load/fuel-mass.ts';
import { headAngleCupsDeg } from './part/head-angle-cups-deg.ts';
import { leanDeg } from './riding/lean-deg.ts';
import { linkLength } from './part/link-length.ts';
import { loadHeight } from './load/load-height.ts';
import { loadMass } from './load/load-mass.ts';
import { passengerHeight } from './load/passenger-height.ts';
import { passengerMass } from './load/passenger-mass.ts';
import { pivotForward } from './part/pivot-forward.ts';
import { pivotUp } from './part/pivot-up.ts';
import { rearTeeth } from './part/rear-teeth.ts';
import { rearTravelUsed } from './riding/rear-travel-used.ts';
import { rearTyre } from './part/rear-tyre.ts';
import { riderForward } from './load/rider-forward.ts';
import { riderHeight } from './load/rider-height.ts';
import { riderMass } from './load/rider-mass.ts';
import { shockAirGap } from './part/shock-air-gap.ts';
import { shockAirPressure } from './part/shock-air-pressure.ts';
import { shockLength } from './part/shock-length.ts';
import { shockMountShim } from './part/shock-mount-shim.ts';
import { shockPreload } from './part/shock-preload.ts';
import { shockSpringRate } from './part/shock-spring-rate.ts';

/** Types, defaults, saved fields, page and command line all follow from these rows. */
const ROWS = [
  shockLength,
  forkTubes,
  frontTeeth,
  rearTeeth,
  axlePosition,
  chainLinks,
  chainSlack,
  clampOffset,
  headAngleCupsDeg,
  shockMountShim,
  linkLength,
  pivotForward,
  pivotUp,
  forkSpringRate,
  forkPreload,
  forkAirGap,
  forkAirPressure,
  shockSpringRate,
  shockPreload,
  shockAirGap,
  shockAirPressure,
  frontTyre,
  rearTyre,
  forkExtenders,
  frontTravelUsed,
  rearTravelUsed,
  riderMass,
  riderHeight,
  riderForward,
  passengerMass,
  passengerHeight,
  fuelMass,
  loadMass,
  loadHeight,
  acceleration,
  engineDeceleration,
  closedBraking,
  closedLeanDeg,
  braking,
  brakeFrontShare,
  leanDeg,
  cornerAcceleration,
  cornerEngineDeceleration,
  cornerBraking,
  dragForce,
  dragHeight,
] as const;

export type Row = (typeof ROWS)[number];

type KeyWith<Holds> = Extract<Row, { readonly holds: Holds }>['key'];

export type NumberAdjuster = NumberDefinition & { readonly key: KeyWith<'number' | 'wholeNumber'> };
export type NumberOrNoneAdjuster = NumberOrNoneDefinition & { readonly key: KeyWith<'wholeNumberOrNone'> };
export type TyreAdjuster = TyreDefinition & { readonly key: KeyWith<'tyre'> };
export type Adjuster = NumberAdjuster | NumberOrNoneAdjuster | TyreAdjuster;

export const ADJUSTERS: readonly Adjuster[] = ROWS;

type AdjusterOf<Key extends Adjuster['key']> = Key extends NumberAdjuster['key']
  ? NumberAdjuster
  : Key extends TyreAdjuster['key']
    ? TyreAdjuster
    : NumberOrNoneAdjuster;

const BY_KEY = new Map<string, Adjuster>(ADJUSTERS.map((adjuster) => [adjuster.key, adjuster]));

/** The adjuster of a key. */
export function adjusterOf<Key extends Adjuster['key']>(key: Key): AdjusterOf<Key> {
  // Keys are those of the list, so each has its row.
  return BY_KEY.get(key) as AdjusterOf<Key>;
}
