/** A figure that a trial can ask for: a reading, or one of those that only trials ask for. */
import type { Absent } from '../readings/absent.ts';
import type { ChangeWords } from '../readings/change-words.ts';
import type { NoWall } from '../riding/equilibrium/against-wall.ts';
import type { NoStand } from '../riding/no-stand.ts';
import type { StandingBike } from '../riding/stand-bike.ts';
import type { QuantityKey } from '../units/all-quantities.ts';
import type { AsSet } from './turn.ts';

export interface TrialFigure extends ChangeWords {
  readonly key: string;
  readonly label: string;
  readonly quantity: QuantityKey;
  /** Whether it is a change already, read against nothing, such as a lift; its words then say which way. */
  readonly isChange: boolean;
  readonly same: string;
  /** The figure in its metric unit, or why there is none. */
  readonly of: (asSet: AsSet, on: StandingBike) => number | NoFigure;
}

export type NoFigure = Absent | NoStand | NoWall;
