/** What a sheet makes of a bike: the bike, its readings with their ±, and what every row is worth. */
import type { Setup } from '../adjusters/setup.ts';
import type { Bike } from '../parts/bike.ts';
import type { StartingBike } from './held/starting-bike.ts';
import type { MeasureKindKey } from './kinds/all-kinds.ts';
import type { MeasureStateKey } from './held/all-measure-states.ts';
import type { MeasurePartKey } from './held/measure-parts.ts';
import type { PhotoOutcome } from './photo/photo.ts';

/**
 * `disagrees`: rows contradict one another more than once in 100 by chance; this is said first. `twoAnswers`: a second,
 * different bike fits as well. `notFixed`: something that the rows speak of keeps its starting value.
 */
export type MeasureStatus = 'solved' | 'notFixed' | 'disagrees' | 'twoAnswers';

/** One reading in its file unit, in the posture of `readIn`. */
export interface MeasuredReading {
  /** Null where the bike has no such reading. */
  readonly value: number | null;
  readonly unit: string;
  /** Standard deviation (1 σ); null where it is not fixed. */
  readonly u: number | null;
  /** False where it depends on something that no row fixes, or its u is beyond 50 mm or 5°. */
  readonly fixed: boolean;
}

/** What a slip of the hand or the eye makes of a figure, recognised by its size. */
export type LikelySlip =
  'inchForMm' | 'mmForInch' | 'cmForMm' | 'mmForCm' | 'poundForKg' | 'kgForPound' | 'otherReference';

export interface Suspicion {
  /** 1 for the row suspected first. */
  readonly place: number;
  /** Rows that this one cannot be told apart from, or not as surely as 19 to 1: the slip may be in either. */
  readonly alike: readonly number[];
  readonly likely: LikelySlip | null;
  /** What the other rows make of it, in the file's unit. */
  readonly expected: number;
}

/** What one row is worth, in the row's file unit (mm, degrees, kg). */
export interface RowOutcome {
  /** As read, in the file's unit, from the kind's own reference; null for a row that is switched off or exact. */
  readonly measured: number | null;
  /** Measured less what the found bike makes of it; null likewise. */
  readonly residual: number | null;
  readonly sd: number;
  /** How much of it the other rows check, 0 to 1; below 0.05 nothing checks it. */
  readonly redundancy: number | null;
  /** The smallest slip that the other rows reveal with 95 %: 4.93·sd/√redundancy; null where nothing checks it. */
  readonly smallestSlipRevealed: number | null;
  readonly suspected: Suspicion | null;
}

/** An unknown of the fit, by its key and its name; in mm, degrees or kg. */
export interface UnknownValue {
  readonly key: string;
  readonly label: string;
  readonly unit: 'mm' | '°' | 'kg';
  readonly value: number;
  /** Null where no row fixes it. */
  readonly u: number | null;
  /** True where no row touches it at all: it keeps its starting value. */
  readonly assumed: boolean;
}

/** A direction that no row fixes: unknowns that move together, the largest part first. */
export interface NotFixed {
  /** `rank`: rows leave it wholly free; `wide`: its u is beyond 50 mm, 5° or 50 kg. */
  readonly why: 'rank' | 'wide';
  readonly moves: readonly { readonly key: string; readonly label: string; readonly part: number }[];
}

/** A measurement that would help, with the u that the chosen reading would have then. */
export interface NextMeasurement {
  readonly kind: MeasureKindKey;
  readonly parts: readonly MeasurePartKey[];
  readonly state: MeasureStateKey;
  readonly otherState: MeasureStateKey | null;
  /** Null where the reading would still not be fixed. */
  readonly u: number | null;
}

/** A different bike that fits as well, and the row that would decide between the two. */
export interface SecondAnswer extends StartingBike {
  readonly readings: Readonly<Record<string, MeasuredReading>>;
  /** What is mirrored in it, by name. */
  readonly mirrored: string;
  readonly decide: (NextMeasurement & { readonly here: number; readonly there: number }) | null;
}

export interface MeasuredBike {
  readonly ok: true;
  readonly status: MeasureStatus;
  readonly bike: Bike;
  readonly setup: Setup;
  /** The state whose posture the readings are of. */
  readonly readIn: MeasureStateKey;
  readonly readings: Readonly<Record<string, MeasuredReading>>;
  /** In the order of the sheet. */
  readonly rows: readonly RowOutcome[];
  readonly unknowns: readonly UnknownValue[];
  readonly notFixed: readonly NotFixed[];
  /** Best first, for the reading that was chosen. */
  readonly next: readonly NextMeasurement[];
  readonly second: SecondAnswer | null;
  /** In the order of the sheet's photos; null for one that the found bike does not lie on. */
  readonly photos: readonly (PhotoOutcome | null)[];
  /** Sum of squared residuals over their sd, how many rows are to spare, and how often chance alone makes it that large. */
  readonly agreement: { readonly chiSquare: number; readonly toSpare: number; readonly chance: number };
}
