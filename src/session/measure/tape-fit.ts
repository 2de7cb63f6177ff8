/** Fits the rows that are kept with a bike, and says what became of each; it comes after the page's first sight, in a part for itself. */
import { buildBike } from '../../core/measure/held/build-bike.ts';
import { fitSheet } from '../../core/measure/fit-sheet.ts';
import { postureOf } from '../../core/measure/held/hold-bike.ts';
import { measureBike } from '../../core/measure/measure-bike.ts';
import type { MeasuredBike, RowOutcome } from '../../core/measure/measured-bike.ts';
import type { StartingBike } from '../../core/measure/held/starting-bike.ts';
import { MEASURE_PARTS } from '../../core/measure/held/measure-parts.ts';
import type { NoMeasure } from '../../core/measure/no-measure.ts';
import type { PhotoOutcome } from '../../core/measure/photo/photo.ts';
import { LEAST_PLACES, placesOn, type MeasurePhoto } from '../../core/measure/photo/photo.ts';
import type { MeasureRow } from '../../core/measure/sheet.ts';
import type { Bike } from '../../core/parts/bike.ts';
import type { KeptMeasure } from '../../document/measure.ts';
import { readKeptPhoto } from '../../document/measure-photo.ts';
import type { MeasuredBy } from '../../workers/measure-messages.ts';
import { nearlySame } from '../nearly-same.ts';
import { knownPhoto, knownRow } from './tape-rows.ts';

/** What became of one row. */
export type RowFate =
  | { readonly kind: 'unknown' }
  | { readonly kind: 'empty' }
  | { readonly kind: 'off' }
  | { readonly kind: 'refused'; readonly why: NoMeasure }
  | { readonly kind: 'counted'; readonly outcome: RowOutcome | null };

export interface FittedRows {
  /** Null while no row counts. */
  readonly found: MeasuredBike | NoMeasure | null;
  /** In the order of the sheet. */
  readonly fates: readonly RowFate[];
  /** Places in the sheet of the rows that were fitted, in the order of the fit: the fit counts rows by it. */
  readonly fitted: readonly number[];
  /** What became of each photo of the sheet; null for one that shows too few places, or that no bike was found on. */
  readonly photos: readonly (PhotoOutcome | null)[];
}

/**
 * Fits every row that can be fitted. A row that cannot be read or cannot be is put aside with its reason and the others
 * are fitted without it, so that one slip of the finger does not take the answer away.
 */
export function fitRows(
  { gaugeZeroed, rows, photos: kept }: KeptMeasure,
  start: StartingBike,
  wanted: string | null = null,
): FittedRows {
  const fates: RowFate[] = [];
  let counted: { readonly place: number; readonly row: MeasureRow }[] = [];
  rows.forEach((kept, place) => {
    const row = knownRow(kept);
    if (row === null) fates.push({ kind: 'unknown' });
    else if (row.figure.trim() === '') fates.push({ kind: 'empty' });
    else if (row.off) fates.push({ kind: 'off' });
    else {
      fates.push({ kind: 'counted', outcome: null });
      counted.push({ place, row });
    }
  });
  const seen = photosOn(kept, start.bike);
  const photos = seen.filter((photo) => photo !== null);
  const none = seen.map(() => null);
  while (counted.length > 0 || photos.length > 0) {
    const sheet = { gaugeZeroed, rows: counted.map(({ row }) => row), photos };
    const found = measureBike({ start, sheet, wanted });
    const fitted = counted.map(({ place }) => place);
    if (!found.ok && found.row !== null) {
      const { place } = counted[found.row];
      // No bike stands by these rows together: which of them is to go, the person says.
      if (found.reason === 'noBike') return { found: { ...found, row: place }, fates, fitted, photos: none };
      const withRows = found.withRows?.map((each) => counted[each].place);
      fates[place] = {
        kind: 'refused',
        why: { ...found, row: place, ...(withRows !== undefined && { withRows }) },
      };
      counted = counted.filter((each) => each.place !== place);
      continue;
    }
    if (found.ok)
      counted.forEach(({ place }, i) => (fates[place] = { kind: 'counted', outcome: found.rows[i] }));
    const outcomes = found.ok ? found.photos : [];
    return {
      found,
      fates,
      fitted,
      photos: seen.map((photo) => (photo === null ? null : (outcomes[photos.indexOf(photo)] ?? null))),
    };
  }
  return { found: null, fates, fitted: [], photos: none };
}

/** The photos of a sheet that this program knows and that show enough of the bike; null for each other one. */
function photosOn(photos: KeptMeasure['photos'], bike: Bike): readonly (MeasurePhoto | null)[] {
  return (photos ?? []).map((json) => {
    const read = readKeptPhoto(json);
    const photo = read === null ? null : knownPhoto(read);
    return photo === null ? null : onBike(photo, bike);
  });
}

/** The photo with the parts that this bike has; null where that leaves too few places. */
function onBike(photo: MeasurePhoto, bike: Bike): MeasurePhoto | null {
  const clicks = photo.clicks.filter(({ part }) => MEASURE_PARTS[part].applies(bike));
  const left = { ...photo, clicks };
  return placesOn(left) >= LEAST_PLACES ? left : null;
}

/** The sheet of the rows and photos that were fitted, as it is asked about further. */
export function measuredBy(
  kept: KeptMeasure,
  start: StartingBike,
  { fitted }: Pick<FittedRows, 'fitted'>,
): MeasuredBy {
  const rows = fitted.flatMap((place) => knownRow(kept.rows[place]) ?? []);
  const photos = photosOn(kept.photos, start.bike).filter((photo) => photo !== null);
  return { start, sheet: { gaugeZeroed: kept.gaugeZeroed, rows, photos } };
}

/** How often a fit is begun anew from the bike that it found, until it finds the same again. */
const MOST_ROUNDS = 8;

/**
 * The bike on which the same rows find the same bike again: how far it sags in the states it was measured in follows
 * from the starting bike, so each round begins with the bike of the one before.
 */
export function settledFit(kept: KeptMeasure, start: StartingBike): FittedRows {
  const first = fitRows(kept, start);
  if (first.found?.ok !== true) return first;
  let from = start;
  let found: StartingBike | null = first.found;
  for (let round = 1; round < MOST_ROUNDS; round++) {
    if (nearlySame(found.bike, from.bike) && nearlySame(found.setup, from.setup)) break;
    from = { bike: found.bike, setup: found.setup, isMeasured: true };
    // The bike alone: what its rows are worth is worked out once, at the end.
    found = bikeOf(kept, from, first);
    if (found === null) break;
  }
  return from === start ? first : fitRows(kept, from);
}

/** The bike that the rows of a fit lead to from another start; null where they lead to none. */
function bikeOf(
  kept: KeptMeasure,
  start: StartingBike,
  fit: Pick<FittedRows, 'fitted'>,
): StartingBike | null {
  const found = fitSheet(start, measuredBy(kept, start, fit).sheet);
  return found.ok ? buildBike(postureOf(found.fit.origin, found.fit.values)) : null;
}

export type TapeFit = Readonly<Record<'fitRows' | 'settledFit', typeof fitRows>> & {
  readonly measuredBy: typeof measuredBy;
};
