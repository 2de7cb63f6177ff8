/** How readings differ between two setups of one measured bike, with the ± of the difference alone. */
import { ADJUSTERS } from '../adjusters/all-adjusters.ts';
import { isAdjusterChanged } from '../adjusters/changed-adjusters.ts';
import type { Setup } from '../adjusters/setup.ts';
import type { Bike } from '../parts/bike.ts';
import { READINGS } from '../readings/all-readings.ts';
import type { RideStateKey } from '../riding/states/all-ride-states.ts';
import { standBike } from '../riding/stand-bike.ts';
import { QUANTITIES } from '../units/all-quantities.ts';
import { buildBike } from './build-bike.ts';
import { fitSheet } from './fit-sheet.ts';
import type { Fit } from './fit-values.ts';
import { postureOf } from './hold-bike.ts';
import type { MeasuredReading, StartingBike } from './measured-bike.ts';
import { spread, widestOf, withOtherSprings } from './measured-readings.ts';
import type { NoMeasure } from './no-measure.ts';
import { moved } from './row-figures.ts';
import type { MeasureSheet } from './sheet.ts';

export interface ChangeRequest {
  readonly start: StartingBike;
  readonly sheet: MeasureSheet;
  /**
   * Where the adjusters stand before and after; tyres and sprockets that stay are those of the measured bike. Null before
   * for the readings themselves, as with adjusters at `to`.
   */
  readonly from: Setup | null;
  readonly to: Setup;
  /** The ride state that both are read in. */
  readonly ride: RideStateKey;
  /** Standard deviation of how far each changed length is really moved, mm; 0 for exact steps. */
  readonly stepSd: number;
}

export interface MeasuredChange {
  readonly ok: true;
  /** After less before, by reading, in its file unit. */
  readonly readings: Readonly<Record<string, MeasuredReading>>;
}

/** Step of the differences, mm or mrad. */
const STEP = 0.05;
/** A change along unknowns that no row touches below this, per mm or mrad, is rounding. */
const ROUNDING = 1e-7;

type Change = readonly (number | null)[];

/**
 * The change of every reading from one setup to another, with its own standard deviation: slopes of the difference by
 * the unknowns carry the fit's covariance, so errors that both setups share cancel. Lengths that were moved add what
 * their step is unsure by. Fixed where no free direction and no untouched unknown changes the difference.
 */
export function measuredChange(request: ChangeRequest): MeasuredChange | NoMeasure {
  const { start, sheet, from, to, stepSd } = request;
  const sheetFit = fitSheet(start, sheet);
  if (!sheetFit.ok) return sheetFit;
  const { fit } = sheetFit;
  const { values, touched } = fit;
  const at = (place: number, by: number): Change => changeAt(fit, moved(values, place, by), request);
  const now = changeAt(fit, values, request);
  const slopes = values.map((_, place) => slopeOf(at(place, STEP), at(place, -STEP), 2 * STEP));
  const steps = (from === null ? [] : movedLengths(from, to)).map((key) =>
    slopeOf(
      changeAt(fit, values, { ...request, to: { ...to, [key]: to[key] + STEP } }),
      changeAt(fit, values, { ...request, to: { ...to, [key]: to[key] - STEP } }),
      2 * STEP,
    ),
  );
  // Springs and travel stay those of the start: what hangs on them is not measured.
  const sprung = changeAt(fit, values, request, withOtherSprings);
  const known = new Set(touched);
  const readings = READINGS.map(({ key, quantity }, i): [string, MeasuredReading] => {
    const unit = QUANTITIES[quantity].fileUnit;
    const along = touched.map((place) => slopes[place][i]);
    const loose =
      !(Math.abs((sprung[i] ?? NaN) - (now[i] ?? NaN)) <= ROUNDING) ||
      slopes.some((slope, place) => !known.has(place) && !(Math.abs(slope[i] ?? NaN) <= ROUNDING));
    const own = now[i] === null || loose ? null : spread(fit, along);
    const dialled = steps.map((slope) => (slope[i] ?? NaN) * stepSd);
    const u = own === null ? null : Math.hypot(own, ...dialled);
    const fixed = u !== null && u <= widestOf(unit);
    return [key, { value: now[i], unit, u: fixed ? u : null, fixed }];
  });
  return { ok: true, readings: Object.fromEntries(readings) };
}

function slopeOf(ahead: Change, back: Change, apart: number): Change {
  return ahead.map((a, i) => {
    const b = back[i];
    return a === null || b === null ? null : (a - b) / apart;
  });
}

/** The change of every reading with these values of the bike; null where a reading has none before or after. */
function changeAt(
  { origin }: Fit,
  values: readonly number[],
  { start, from, to, ride }: Pick<ChangeRequest, 'start' | 'from' | 'to' | 'ride'>,
  onSprings: (built: StartingBike) => StartingBike = (built) => built,
): Change {
  const built = buildBike(postureOf(origin, values));
  const readAs = (asked: Setup): Change | null => {
    if (built === null) return null;
    const { bike, setup } = onSprings({ bike: built.bike, setup: asked });
    return readIn(bike, { asked: setup, found: built.setup, measuredAs: start.setup }, ride);
  };
  const before = from === null ? READINGS.map(() => 0) : readAs(from);
  const after = readAs(to);
  return READINGS.map((_, i) => {
    const a = before?.[i] ?? null;
    const b = after?.[i] ?? null;
    return a === null || b === null ? null : b - a;
  });
}

/** Adjusters that a sheet finds: teeth that were counted, and the travel that the bike was measured at. */
const MEASURED = ['frontTeeth', 'rearTeeth', 'frontTravelUsed', 'rearTravelUsed'] as const;

interface Setups {
  readonly asked: Setup;
  readonly found: Setup;
  readonly measuredAs: Setup;
}

/** Readings of the measured bike with its adjusters set; tyres, sprockets and travel that stay are as measured and counted. */
function readIn(bike: Bike, { asked, found, measuredAs }: Setups, ride: RideStateKey): Change {
  const stays = (key: (typeof MEASURED)[number]): boolean => !isAdjusterChanged(key, asked, measuredAs);
  const setup: Setup = {
    ...asked,
    ...Object.fromEntries(MEASURED.filter(stays).map((key) => [key, found[key]])),
    ...(isAdjusterChanged('frontTyre', asked, measuredAs) ? {} : { frontTyre: found.frontTyre }),
    ...(isAdjusterChanged('rearTyre', asked, measuredAs) ? {} : { rearTyre: found.rearTyre }),
  };
  const stood = standBike(bike, setup, ride);
  return READINGS.map(({ quantity, read }) => {
    const value = stood.ok ? read(stood) : null;
    return typeof value === 'number' && Number.isFinite(value) ? QUANTITIES[quantity].fromCore(value) : null;
  });
}

/** The lengths that are set differently. */
function movedLengths(from: Setup, to: Setup): readonly NumberLengthKey[] {
  return LENGTH_KEYS.filter((key) => isAdjusterChanged(key, to, from));
}

type NumberLengthKey = {
  [Key in keyof Setup]: Setup[Key] extends number ? Key : never;
}[keyof Setup];

const LENGTH_KEYS: readonly NumberLengthKey[] = ADJUSTERS.flatMap((adjuster) =>
  adjuster.holds === 'number' && adjuster.quantity === 'length' ? [adjuster.key] : [],
);
