/** Why a sheet cannot be measured by: a row and its reason. */
import type { Refusal } from '../numeric/refusal.ts';
import type { TyreReason } from '../parts/tyre.ts';
import type { ParseReason } from '../units/parse-quantity.ts';
import type { NoStand } from '../riding/no-stand.ts';
import type { Suspicion } from './measured-bike.ts';
import type { MeasurePartKey } from './held/measure-parts.ts';

/**
 * `figureUnreadable`: the typed figure is no number of that quantity; `figureImpossible`: no motorcycle has it;
 * `partsWrong`: not the parts that the kind takes; `partMissing`: this bike has no such part; `statesWrong`: a change
 * needs two different states; `notWeighedSo`: scales are not read in that state; `sdWrong`: no standard deviation above
 * zero; `otherReferenceWrong`: the kind has one reference; `triangleImpossible`: three distances that make no triangle;
 * `countedTwice`: two rows count one sprocket differently; `tooManyRows`; `photoImpossible`: a photo whose numbers cannot be, or with fewer than three places clicked; `startCannotStand`: the starting bike does not stand; `noBike`: the rows lead to no bike that stands,
 * and `row` is the one suspected.
 */
export type NoMeasureReason =
  | 'figureUnreadable'
  | 'figureImpossible'
  | 'partsWrong'
  | 'partMissing'
  | 'statesWrong'
  | 'notWeighedSo'
  | 'sdWrong'
  | 'otherReferenceWrong'
  | 'triangleImpossible'
  | 'countedTwice'
  | 'tooManyRows'
  | 'photoImpossible'
  | 'startCannotStand'
  | 'noBike';

/** What some of the refusals name besides the row. */
interface RowFigures {
  readonly found?: number;
  readonly limit?: number;
  /** The other rows of an impossible triangle. */
  readonly withRows?: readonly number[];
  readonly part?: MeasurePartKey;
  readonly unread?: ParseReason | TyreReason;
  readonly stand?: NoStand;
  /** What the other rows make of the row that leads to no bike. */
  readonly suspected?: Suspicion;
}

/** `row` is its place in the sheet, from 0; null where no single row is to blame. */
export type NoMeasure = Refusal<NoMeasureReason, RowFigures & { readonly row: number | null }>;

/** Refuses a sheet for one of its rows, or as a whole. */
export function noMeasure(reason: NoMeasureReason, row: number | null, figures: RowFigures = {}): NoMeasure {
  return { ok: false, reason, row, ...figures };
}
