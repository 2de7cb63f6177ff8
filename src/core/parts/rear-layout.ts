/** How shock and links of a rear suspension lie, as a person draws or measures them. */
import type { FramePoint } from './frame-point.ts';

/**
 * One row of the rear suspension's table, mm: how far the axle has risen, and how far the shock is pushed in. Each as
 * read lies within its ± of the truth, anywhere in it as likely; without a ± it is exact. The ± of the first row is that of
 * the readings hanging, from which all rows are counted.
 */
export interface TravelRow {
  readonly wheelTravel: number;
  readonly shockStroke: number;
  readonly wheelTravelPlusMinus?: number;
  readonly shockStrokePlusMinus?: number;
}

/**
 * A place fixed to the swingarm, mm: `along` from the pivot toward the rear axle, `above` square to that line,
 * upward. The line is the one to the axle at the front end of its slot; moving the axle in its slot moves no mount.
 */
export interface ArmPoint {
  readonly along: number;
  readonly above: number;
}

/** A shock as delivered, eye to eye, mm: fully extended, and with its stroke used up. */
export interface ShockLengths {
  readonly fullLength: number;
  readonly closedLength: number;
}

/** Where the shock's end away from the rocker is bolted. */
export type ShockFarEnd =
  { readonly on: 'frame'; readonly at: FramePoint } | { readonly on: 'arm'; readonly at: ArmPoint };

/** A table of measured travel for someone who cannot measure the links. */
export interface TableLayout {
  readonly kind: 'table';
  readonly travelTable: readonly TravelRow[];
  /** Nose-up pitch of the frame's axes against the ground while the table was measured, degrees; mostly 0. */
  readonly tablePitchDeg: number;
  /** Line pivot → axle below the frame's x axis, degrees, hanging, with the shock as delivered. */
  readonly toppedOutAngleDeg: number;
  /** Rise of the axle from hanging to bottomed, square to the ground with the frame held, mm. */
  readonly wheelTravel: number;
}

/** What every drawn layout has. */
interface DrawnLayout {
  /**
   * Line pivot → axle below the frame's x axis, degrees, in the posture in which the links were drawn. Rod length,
   * shape of the rocker, and on which side of one another rod and rocker fold, are those of the drawing.
   */
  readonly drawnAngleDeg: number;
  /** Nose-up pitch of the frame's axes against the ground while wheel travel is counted, degrees; mostly 0. */
  readonly framePitchDeg: number;
  readonly shock: ShockLengths;
}

/** One shock, or two alike side by side, straight from the frame to the swingarm. */
export interface DirectLayout extends DrawnLayout {
  readonly kind: 'direct';
  readonly shockOnFrame: FramePoint;
  readonly shockOnArm: ArmPoint;
}

/** Rocker that turns on the frame, pulled by a rod from the swingarm. Points of the rocker are frame points as drawn. */
export interface RockerOnFrameLayout extends DrawnLayout {
  readonly kind: 'rockerOnFrame';
  readonly rockerPivot: FramePoint;
  readonly rodOnRocker: FramePoint;
  readonly shockOnRocker: FramePoint;
  readonly rodOnArm: ArmPoint;
  readonly shockFarEnd: ShockFarEnd;
}

/** Rocker that turns on the swingarm, held by a link rod to the frame. Points of the rocker are arm points as drawn. */
export interface RockerOnArmLayout extends DrawnLayout {
  readonly kind: 'rockerOnArm';
  readonly rockerPivot: ArmPoint;
  readonly rodOnRocker: ArmPoint;
  readonly shockOnRocker: ArmPoint;
  readonly rodOnFrame: FramePoint;
  readonly shockFarEnd: ShockFarEnd;
}

export type RockerLayout = RockerOnFrameLayout | RockerOnArmLayout;
export type LinkLayout = DirectLayout | RockerLayout;
export type Layout = TableLayout | LinkLayout;
