/** Why a bike has no pose: which parts cannot meet. */
import type { Refusal } from '../numeric/refusal.ts';
import type { TyreReason } from '../parts/tyre.ts';

export type NoPoseReason =
  | TyreReason
  | 'inputNotANumber'
  | 'inputTooLarge'
  | 'axlesTooClose'
  | 'upsideDown'
  | 'axisFlat'
  | 'forkTooShort'
  | 'forkTravelBeyond'
  | 'rearTravelBeyond'
  | 'travelTableUnusable'
  | 'swingarmCannotReach'
  | 'axleOutOfSlot'
  | 'pivotBehindPatch'
  | 'sprocketsOverlap'
  | 'teethImpossible'
  | 'chainPitchImpossible'
  | 'guideImpossible'
  | 'countershaftBehindAxle'
  | 'massNegative'
  /** A tyre's radial rate, N/mm. */
  | 'tyreRateNotAboveZero'
  /** The torque arm of a shaft's housing: too long or too short, or its line through the axle, mm. */
  | 'torqueArmCannotClose'
  | 'torqueArmInLine';

/** Why there is no pose; figures in mm, teeth, kg. */
export type NoPose = Refusal<NoPoseReason>;
