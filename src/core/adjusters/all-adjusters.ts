/** The adjusters: all that can be set, in the order of the page and of a saved file. */
import type { NumberDefinition, NumberOrNoneDefinition, TyreDefinition } from './adjuster.ts';
import { acceleration } from './acceleration.ts';
import { axlePosition } from './axle-position.ts';
import { brakeFrontShare } from './brake-front-share.ts';
import { braking } from './braking.ts';
import { chainLinks } from './chain-links.ts';
import { chainSlack } from './chain-slack.ts';
import { clampOffset } from './clamp-offset.ts';
import { closedBraking } from './closed-braking.ts';
import { closedLeanDeg } from './closed-lean-deg.ts';
import { cornerAcceleration } from './corner-acceleration.ts';
import { cornerBraking } from './corner-braking.ts';
import { cornerEngineDeceleration } from './corner-engine-deceleration.ts';
import { dragForce } from './drag-force.ts';
import { dragHeight } from './drag-height.ts';
import { engineDeceleration } from './engine-deceleration.ts';
import { forkAirGap } from './fork-air-gap.ts';
import { forkAirPressure } from './fork-air-pressure.ts';
import { forkExtenders } from './fork-extenders.ts';
import { forkPreload } from './fork-preload.ts';
import { forkSpringRate } from './fork-spring-rate.ts';
import { forkTubes } from './fork-tubes.ts';
import { frontTeeth } from './front-teeth.ts';
import { frontTravelUsed } from './front-travel-used.ts';
import { frontTyre } from './front-tyre.ts';
import { fuelMass } from './fuel-mass.ts';
import { headAngleCupsDeg } from './head-angle-cups-deg.ts';
import { leanDeg } from './lean-deg.ts';
import { linkLength } from './link-length.ts';
import { loadHeight } from './load-height.ts';
import { loadMass } from './load-mass.ts';
import { passengerHeight } from './passenger-height.ts';
import { passengerMass } from './passenger-mass.ts';
import { pivotForward } from './pivot-forward.ts';
import { pivotUp } from './pivot-up.ts';
import { rearTeeth } from './rear-teeth.ts';
import { rearTravelUsed } from './rear-travel-used.ts';
import { rearTyre } from './rear-tyre.ts';
import { riderForward } from './rider-forward.ts';
import { riderHeight } from './rider-height.ts';
import { riderMass } from './rider-mass.ts';
import { shockAirGap } from './shock-air-gap.ts';
import { shockAirPressure } from './shock-air-pressure.ts';
import { shockLength } from './shock-length.ts';
import { shockMountShim } from './shock-mount-shim.ts';
import { shockPreload } from './shock-preload.ts';
import { shockSpringRate } from './shock-spring-rate.ts';

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
