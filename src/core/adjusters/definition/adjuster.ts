/** What an adjuster is: one thing that can be set, on the bike, in what it carries or in how it is ridden. */
import type { Bike } from '../../parts/bike.ts';
import type { SavedBounds } from '../../parts/bounds.ts';
import type { DriveText } from '../../parts/drive-noun.ts';
import type { Tyre } from '../../parts/tyre.ts';
import type { QuantityKey } from '../../units/all-quantities.ts';
import type { AdjusterGroup } from './adjuster-groups.ts';

/** `part`: what a mechanic adjusts on the bike; `load`: what the bike carries; `riding`: how it is ridden. */
export type AdjusterKind = 'part' | 'load' | 'riding';

/** The part of the bike that ends a range; `core/standing/adjuster-range.ts` computes how far it reaches. */
export type Limit =
  'shortestShock' | 'longestShock' | 'leastFrontTeeth' | 'slot' | 'forkTravel' | 'rearTravel';

/** The range that common practice in a workshop or a limit of the bike gives, in the adjuster's metric unit. */
export interface DefinedRange {
  readonly least: number | Limit;
  readonly most: number | Limit;
  /** One step of the adjuster. */
  readonly step: number | ((bike: Bike) => number);
}

/** An adjuster's value as the workshop also counts it. */
export interface Aside {
  readonly amount: number;
  readonly counted: 'turns' | 'links' | 'teeth';
}

/** Readings by their keys: those in which people see first what an adjuster does. */
export type SeenReading =
  | 'rake'
  | 'trail'
  | 'wheelbase'
  | 'seatHeight'
  | 'swingarmAngle'
  | 'antiSquat'
  | 'freeTravel'
  | 'frontTravel'
  | 'rearTravel'
  | 'frontWeightShare'
  | 'centreHeight';

/** What an adjuster can be set to, by what it holds. */
export interface ValueHeld {
  readonly number: number;
  readonly wholeNumber: number;
  readonly wholeNumberOrNone: number | null;
  readonly tyre: Tyre;
}

interface Definition {
  readonly key: string;
  /** The key it had before; files of an older schema and the command line may still use it. */
  readonly formerly?: string;
  readonly kind: AdjusterKind;
  readonly group: AdjusterGroup;
  readonly label: DriveText;
  /** The part that is adjusted, behind "from", such as "the shock"; left out where the label says it. */
  readonly part?: DriveText;
  /** What it is, which way is positive, how it is measured, and what to check. */
  readonly help: DriveText;
  /** Whether this bike has the part, or still holds a value to clear; left out when every bike has it. */
  readonly applies?: (bike: Bike, held: number | Tyre | null) => boolean;
  /** Which end more of it moves up or down as the bike stands; left out where that depends on the bike, or it moves none. */
  readonly moves?: {
    readonly end: 'front' | 'rear';
    readonly more: 'up' | 'down';
    /** People turn it to raise or lower that end: its buttons say so, and its track rises to the right. */
    readonly turnedAsHeight?: true;
  };
  /** More of it lies further back: its track runs as the side view shows the bike, with the front at the right. */
  readonly runsBack?: true;
  /** The reading in which a person sees first what it does; left out where that is the height of its end. */
  readonly reading?: SeenReading;
}

export interface NumberDefinition extends Definition {
  readonly holds: 'number' | 'wholeNumber';
  /** Its number is the metric number of this quantity. */
  readonly quantity: QuantityKey;
  /** What a file may hold; the core decides whether the bike can stand so. */
  readonly saved: SavedBounds;
  /** What to set instead of a value below the least that is saved, in a sentence; left out where nothing is meant by one. */
  readonly belowLeast?: string;
  /** What a file without it means; `essential`: a file without it is refused. */
  readonly default: number | 'essential';
  readonly range: DefinedRange;
  /** Sentences that say what ends the range at either end; left out where only workshop custom ends it. */
  readonly ends?: { readonly least?: string; readonly most?: string };
  /** The adjuster without which it changes nothing: while that one is zero. */
  readonly needs?: 'riderMass' | 'passengerMass' | 'loadMass' | 'dragForce';
  /** The adjuster that sets this one's value unless it is null; setting this one by hand clears it. */
  readonly placedBy?: 'chainLinks';
  readonly aside?: (value: number, bike: Bike) => Aside | null;
  /** Minutes of work to turn it; left out where those of its group are usual. Common practice, no source. */
  readonly minutes?: number;
  /** A mechanic's words for a value above and below another. */
  readonly more: string;
  readonly less: string;
  /** What its figure counts, beside it in its field, where lowering its end makes the figure rise. */
  readonly figure?: string;
}

/** A count of something that may be missing: null, or left out of the file. */
export interface NumberOrNoneDefinition extends Definition {
  readonly holds: 'wholeNumberOrNone';
  readonly quantity: QuantityKey;
  readonly saved: SavedBounds;
  readonly default: null;
}

export interface TyreDefinition extends Definition {
  readonly holds: 'tyre';
  readonly default: 'essential';
  readonly more: string;
  readonly less: string;
}

/** A length as turns of an adjuster, mm a turn; null without a thread. */
export const inTurns = (value: number, thread: number | null): Aside | null =>
  thread === null ? null : { amount: value / thread, counted: 'turns' };
