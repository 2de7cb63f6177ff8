/** Why a bike does not come to rest on its springs. */
import type { Refusal } from '../numeric/refusal.ts';
import type { NoLinkageReason, WayEnd } from '../linkage/no-linkage.ts';

export type SpringReason =
  | 'rateNotAboveZero'
  | 'springCountImpossible'
  | 'preloadBeyondSpring'
  | 'noStroke'
  | 'bumpStopImpossible'
  | 'topOutImpossible'
  /** A stage of a spring that is no length, mm. */
  | 'stageImpossible'
  /** Of a force table: the row in the way, counted from 1. */
  | 'forceTableTooShort'
  | 'forceTableNotFromZero'
  | 'forceTableFalls'
  /** Neither a spring nor air in any leg. */
  | 'nothingHolds'
  /** A bore, a sliding tube or a chamber that is no size. */
  | 'airSizeImpossible'
  | 'airExponentImpossible'
  | 'balanceChamberImpossible'
  /** Less than no air at all, N/mm² above the air outside. */
  | 'airPressureImpossible'
  /** The air is used up before the travel is: the stroke at which the end locks, mm. */
  | 'noAirLeft'
  /** A tyre that sinks further than its sidewall is high, mm. */
  | 'tyreFlat'
  /** A balance chamber that pulls the wheel right through its travel. */
  | 'balanceTooStrong';

export type NoEquilibriumReason =
  | NoLinkageReason
  | SpringReason
  /** Nothing has mass, so there is no equilibrium. */
  | 'noMass'
  /** The unsprung parts weigh as much as the whole bike, kg. */
  | 'unsprungTooHeavy'
  /** Centre of gravity at or behind the rear axle, or at or ahead of the front one: one wheel carries nothing. */
  | 'massBehindRearAxle'
  | 'massAheadOfFrontAxle'
  /** More acceleration (or deceleration) than the front (or the rear) wheel stays down at; both in g. */
  | 'frontLifts'
  | 'rearLifts'
  /** The front (or rear) never lifts within what is looked through. */
  | 'neverLifts'
  | 'leanImpossible'
  | 'brakeShareImpossible'
  /** Acceleration and engine braking or brakes at once, g. */
  | 'throttleOpenAndClosed'
  | 'dragImpossible'
  /** Of a weigh-in: a scale that shows more than the whole bike, a lift no axle can have or that tells nothing. */
  | 'readingBeyondMass'
  | 'liftImpossible'
  | 'uncertaintyNegative'
  /** The centre comes out below the ground, or higher than the wheelbase is long; mm. */
  | 'centreHeightImpossible'
  /** The fuel said to be in the tank weighs as much as the whole bike, kg. */
  | 'fuelTooHeavy'
  /** Of spring help: sags no spring can give together, or a list without a usable rate. */
  | 'sagImpossible'
  | 'noRateFits'
  | 'stayCannotClose'
  | 'stayThroughAxle'
  | 'notConverged';

/**
 * Why there is no equilibrium; figures in mm, N/mm, g, kg, radians. `because` is what ends the way of the links; `leg`
 * says that it is the fork leg that is unlike the first.
 */
export type NoEquilibrium = Refusal<
  NoEquilibriumReason,
  { readonly because?: WayEnd; readonly leg?: 'other' }
>;
