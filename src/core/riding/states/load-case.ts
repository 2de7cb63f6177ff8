/** How a bike is held and loaded while it is read: on its stops, at a given travel, or in equilibrium on its springs. */
import type { AdjusterKey } from '../../adjusters/setup.ts';
import type { Travel } from '../../standing/stance.ts';
import type { RideForces } from '../equilibrium/ride-forces.ts';

/** Refusals whose figure comes from one adjuster in one case and from another in the next. */
export type CaseRefusal =
  | 'frontLifts'
  | 'rearLifts'
  | 'forkTravelBeyond'
  | 'rearTravelBeyond'
  | 'throttleOpenAndClosed'
  | 'leanImpossible';

/** The adjuster behind each figure of a case, for the way from a refusal to that adjuster. */
export type SetBy = Readonly<Partial<Record<CaseRefusal, AdjusterKey>>>;

/** Both ends as they hang in the air. */
export interface Hanging {
  readonly kind: 'hanging';
}

/** Both ends held at a travel. */
export interface AtTravel {
  readonly kind: 'travel';
  readonly travel: Travel;
  readonly setBy: SetBy;
}

/** The springs carry the bike under steady forces. */
export interface InEquilibrium {
  readonly kind: 'equilibrium';
  readonly forces: RideForces;
  /** Whether rider, passenger and load are on the bike. */
  readonly carries: boolean;
  /** Whether the bike rolls; without acceleration it otherwise stands still. */
  readonly rolls: boolean;
  readonly setBy: SetBy;
}

export type LoadCase = Hanging | AtTravel | InEquilibrium;
