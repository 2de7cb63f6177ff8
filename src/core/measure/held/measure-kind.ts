/** What a kind of measurement is: what is held where, what it is of, and what the bike would make it. */
import type { QuantityKey } from '../../units/all-quantities.ts';
import type { MeasureStateKey } from './all-measure-states.ts';
import type { HeldBike } from './held-bike.ts';
import type { MeasurePartKey, PartShape } from './measure-parts.ts';

/** What the kind is measured between; an empty list for what belongs to the whole bike. */
export type TakenParts = readonly (readonly PartShape[])[];

/**
 * What the help picture shows of a kind: a tape between its two parts (straight, along the floor, upright) or up from the
 * floor, a gauge along a line, a scale, what is measured round a wheel, or a figure that belongs to the whole bike.
 */
export type DrawnAs =
  | 'tape'
  | 'levelTape'
  | 'uprightTape'
  | 'tapeFromFloor'
  | 'gauge'
  | 'scale'
  | 'round'
  | 'trail'
  | 'wheelbase'
  | 'steeringAxis'
  | 'offset'
  | 'tube'
  | 'shock';

export interface MeasureKind {
  readonly key: string;
  readonly label: string;
  readonly quantity: QuantityKey;
  /** `size`: a tyre's size code; `exact`: a count; both are read into the bike. */
  readonly read: 'number' | 'size' | 'exact';
  /** One list of shapes for each part that a row of this kind names. */
  readonly takes: TakenParts;
  /** Standard deviation of a careful reading in the file's unit (mm, degrees, kg); a row may have its own. */
  readonly sd: number;
  readonly state: MeasureStateKey;
  /** True where a row is one distance in a first state less the same in a second one. */
  readonly betweenStates: boolean;
  /** True where a distance out of plane lengthens what the tape shows. */
  readonly slant: boolean;
  /** True where the figure is the same in every state, so that its state says nothing. */
  readonly anyState: boolean;
  /** Least and most that a motorcycle can have, in the file's unit. */
  readonly least: number;
  readonly most: number;
  /** Null for what nobody types. */
  readonly drawnAs: DrawnAs | null;
  /** Where to hold the tape or the gauge. */
  readonly help: string;
  /**
   * What the bike as held would make of it, in the file's unit, with the parts that the row names; null where these
   * parts have no such figure.
   */
  readonly figure: (held: HeldBike, parts: readonly MeasurePartKey[]) => number | null;
  /** What a photo cannot show by itself and this figure gives; left out where that is nothing. */
  readonly gives?: 'wheelSize' | 'axleOffset';
  /** The same figure read from the other reference, such as from horizontal for from vertical; null where there is none. */
  readonly fromOther: { readonly label: string; readonly turn: (figure: number) => number } | null;
}
