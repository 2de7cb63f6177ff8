/** What a reading is: one number about a standing bike, with everything a person needs to trust and use it. */
import type { DriveNoun } from '../parts/drive-noun.ts';
import type { RideStateKey } from '../riding/states/all-ride-states.ts';
import type { StandingBike } from '../riding/stand-bike.ts';
import type { Absent } from './absent.ts';
import type { ChangeWords } from './change-words.ts';
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
  | 'clearance'
  | 'engineBrakingLine'
  | 'brakeLine'
  | 'forkTravel'
  | 'forkTop'
  | 'rearTravel'
  | 'clampGap'
  | 'wheelLoads';

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

/** Its words for a change are a rider's, without the number. */
export interface Reading extends ChangeWords {
  /** The same word as the file, the code, the JSON output and the saved choice of readings. */
  readonly key: string;
  /** The key it had until lately, still read and written for one version. */
  readonly formerly?: string;
  readonly label: string;
  readonly group: ReadingGroup;
  readonly quantity: QuantityKey;
  readonly construction: Construction;
  /** The ride state in which the trade quotes it: its number there stands beside the one shown. Left out where it is quoted in none. */
  readonly quotedIn?: RideStateKey;
  /** What it is held against on the gas, in its own unit, with its name; left out where it is held against nothing. */
  readonly heldAgainst?: { readonly name: string; readonly read: (stance: StandingBike) => number | Absent };
  /** The reading in the core's unit (mm, radians, per cent, g), or why there is none. */
  readonly read: (stance: StandingBike) => number | Absent;
  /** Where motorcycles lie, in its file unit; beyond it nothing is said of feel. Common practice, no source. Left out where any value may be. */
  readonly usual?: { readonly least: number; readonly most: number };
  readonly help: ReadingHelp;
  /** Those of its texts that name the drive, for any drive; left out where none does. */
  readonly texts?: (
    drive: DriveNoun,
  ) => Partial<Pick<Reading, 'label' | 'more' | 'less' | 'belowZero' | 'acrossZero' | 'help'>>;
}
