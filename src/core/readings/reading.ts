/** What a reading is: one number about a standing bike, with everything a person needs to trust and use it. */
import type { DriveNoun } from '../parts/drive-noun.ts';
import type { StandingBike } from '../riding/stand-bike.ts';
import type { QuantityKey } from '../units/all-quantities.ts';

export type ReadingGroup = 'steering' | 'rearEnd' | 'suspension' | 'drive' | 'balance';

/** The part of the drawing that shows how a reading comes about. */
export type Construction =
  | 'trailTriangle'
  | 'steeringAxis'
  | 'wheelbase'
  | 'swingarmLine'
  | 'chainRuns'
  | 'squatLine'
  | 'loadTransferLine'
  | 'centreOfGravity'
  | 'heights'
  | 'engineBrakingLine'
  | 'brakeLine'
  | 'forkTravel'
  | 'forkTop'
  | 'rearTravel'
  | 'clampGap'
  | 'wheelLoads';

/** Why a reading has no number; a normal outcome, told in words. */
export type AbsentReason =
  | 'noMass'
  | 'centreOnGround'
  | 'neverSquats'
  | 'noSprings'
  /** The ride state is no balance of the springs. */
  | 'notCarried'
  | 'coilsClosed'
  | 'linksSilent'
  | 'deadPoint'
  | 'noClampDepth'
  | 'noLeastHeight'
  /** A shaft or hub drive. */
  | 'noRun'
  | 'stayCannotClose'
  | 'stayThroughAxle';

export interface ReadingHelp {
  /** What it is, in a rider's words. */
  readonly what: string;
  /** Which way is positive. */
  readonly sign: string;
  /** How it is measured on a real bike. */
  readonly measured: string;
  /** What more or less of it feels like. */
  readonly feels: string;
}

export interface Reading {
  /** The same word as the file, the code, the JSON output and the saved choice of readings. */
  readonly key: string;
  /** The key it had until lately, still read and written for one version. */
  readonly formerly?: string;
  readonly label: string;
  readonly group: ReadingGroup;
  readonly quantity: QuantityKey;
  readonly construction: Construction;
  /** The reading in the core's unit (mm, radians, per cent, g), or why there is none. */
  readonly read: (stance: StandingBike) => number | AbsentReason;
  /** A rider's word for a change upward and downward, without the number. */
  readonly more: string;
  readonly less: string;
  readonly help: ReadingHelp;
  /** Those of its texts that name the drive, for any drive; left out where none does. */
  readonly texts?: (drive: DriveNoun) => Partial<Pick<Reading, 'label' | 'more' | 'less' | 'help'>>;
}

/** The absent reasons as sentences. */
export const ABSENT_WORDS: Readonly<Record<AbsentReason, string>> = {
  noMass: 'needs a mass: give the bike, the rider or the load one',
  centreOnGround: 'the centre of gravity is not above the ground',
  neverSquats: 'no ratio: the squat line lies level, so only the spring carries the load transfer',
  noSprings: 'needs springs: set the rates printed on those of fork and shock, among the adjusters',
  notCarried: 'not a state that the springs carry: choose “Rider on board” or another in which they do',
  coilsClosed: 'the coils would have closed before this travel',
  linksSilent: 'the rear links have no answer at this travel',
  deadPoint: 'the shock stands still here, so no leverage can be told',
  noClampDepth: 'needs the lower clamp’s underside, among the fork’s figures of the bike',
  noLeastHeight: 'needs the least fork height of the maker’s manual, among the fork’s figures of the bike',
  noRun: 'a shaft or hub drive has no chain run',
  stayCannotClose: 'the caliper’s stay is too long or too short to reach from bracket to frame',
  stayThroughAxle: 'the caliper’s stay points at the axle, so it holds nothing',
};
