/** What is measured on one bike: rows in any number and order, as typed. */
import type { MeasureKindKey } from './kinds/all-kinds.ts';
import type { MeasureStateKey } from './held/all-measure-states.ts';
import type { MeasurePartKey } from './held/measure-parts.ts';
import type { MeasurePhoto } from './photo/photo.ts';

export interface MeasureRow {
  readonly kind: MeasureKindKey;
  /** As many parts as the kind takes, in its order. */
  readonly parts: readonly MeasurePartKey[];
  readonly state: MeasureStateKey;
  /** The second state, for a change between two states; null where the kind needs one state. */
  readonly otherState: MeasureStateKey | null;
  /** As typed: `452.5`, `17 3/4`, `120/70-17`. */
  readonly figure: string;
  /** As typed, such as `in`; empty for the metric unit of the kind. */
  readonly unit: string;
  /** Standard deviation in the file's unit (mm, degrees, kg); null for that of the kind. */
  readonly sd: number | null;
  /** How far one part lies behind the other, square to the side view, mm; 0 where both lie in one plane or it does not count. */
  readonly outOfPlane: number;
  /** Read from the other reference of the kind, such as from horizontal. */
  readonly fromOther: boolean;
  /** Left out of the fit by the person. */
  readonly off: boolean;
}

export interface MeasureSheet {
  /** Whether the gauge was zeroed on the floor in line with the bike; otherwise the floor's slope is an unknown, 0° ± 0.5°. */
  readonly gaugeZeroed: boolean;
  readonly rows: readonly MeasureRow[];
  /** Photos of the bike, fitted together with the rows; left out where there is none. */
  readonly photos?: readonly MeasurePhoto[];
}
