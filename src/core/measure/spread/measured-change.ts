/** How readings differ between two setups of one measured bike, with the ± of the difference alone. */
import { ADJUSTERS } from '../../adjusters/all-adjusters.ts';
import { isAdjusterChanged } from '../../adjusters/changed-adjusters.ts';
import type { Setup } from '../../adjusters/setup.ts';
import type { Bike } from '../../parts/bike.ts';
import { READINGS } from '../../readings/all-readings.ts';
import { rideStateOf, type RideStateKey } from '../../riding/states/all-ride-states.ts';
import { standBike, type StandingBike } from '../../riding/stand-bike.ts';
import { QUANTITIES } from '../../units/all-quantities.ts';
import { buildBike } from '../held/build-bike.ts';
import { fitSheet } from '../fit-sheet.ts';
import type { Fit } from '../fit-values.ts';
import { postureOf } from '../held/hold-bike.ts';
import { figureSpreads, slopeOf, spreadOf, type Figures } from './figure-spreads.ts';
import type { MeasuredReading } from '../measured-bike.ts';
import type { StartingBike } from '../held/starting-bike.ts';
import { widestOf } from '../measured-readings.ts';
import { springSpreads } from './on-springs.ts';
import { setupAs } from '../held/setup-as.ts';
import type { NoMeasure } from '../no-measure.ts';
import type { MeasureSheet } from '../sheet.ts';

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

/**
 * The change of every reading from one setup to another, with its own standard deviation: slopes of the difference by
 * the unknowns carry the fit's covariance, so errors that both setups share cancel. Lengths that were moved add what
 * their step is unsure by. Fixed where no free direction and no untouched unknown changes the difference.
 */
export function measuredChange(request: ChangeRequest): MeasuredChange | NoMeasure {
  const sheetFit = fitSheet(request.start, request.sheet);
  if (!sheetFit.ok) return sheetFit;
  return { ok: true, readings: changeSpreads(sheetFit.fit, request) };
}

/** The same of a sheet that is fitted already. */
export function changeSpreads(fit: Fit, request: Omit<ChangeRequest, 'sheet'>): MeasuredChange['readings'] {
  const { from, to, stepSd } = request;
  const spreads = rideStateOf(request.ride).springsCarry
    ? springSpreads(fit, {
        ...request,
        setups: from === null ? [to] : [from, to],
        read: (stood) => {
          const after = read(stood.at(-1) ?? null);
          return from === null ? after : difference(read(stood[0]), after);
        },
      })
    : figureSpreads(fit, (made, onSprings) => changeOf(made, onSprings, request)).map((each) => ({
        value: each.value,
        u: spreadOf(each),
      }));
  const built = buildBike(postureOf(fit.origin, fit.values));
  const at = (key: NumberLengthKey, by: number): Figures | null =>
    built === null
      ? null
      : changeOf(built, (same) => same, { ...request, to: { ...to, [key]: to[key] + by } });
  const steps = (from === null ? [] : movedLengths(from, to)).map((key) => {
    const [ahead, back] = [at(key, STEP), at(key, -STEP)];
    return READINGS.map((_, i) => slopeOf(ahead?.[i] ?? null, back?.[i] ?? null, 2 * STEP));
  });
  return Object.fromEntries(
    READINGS.map(({ key, quantity }, i): [string, MeasuredReading] => {
      const unit = QUANTITIES[quantity].fileUnit;
      const { value, u: own } = spreads.at(i) ?? { value: null, u: null };
      const dialled = steps.map((slope) => (slope[i] ?? NaN) * stepSd);
      const u = own === null ? null : Math.hypot(own, ...dialled);
      const fixed = u !== null && u <= widestOf(unit);
      return [key, { value, unit, u: fixed ? u : null, fixed }];
    }),
  );
}

/** The change of every reading on a bike of these values; null where a reading has none before or after. */
function changeOf(
  built: StartingBike,
  onSprings: (built: StartingBike) => StartingBike,
  { start, from, to, ride }: Pick<ChangeRequest, 'start' | 'from' | 'to' | 'ride'>,
): Figures {
  const readAs = (asked: Setup): Figures => {
    const { bike, setup } = onSprings({ bike: built.bike, setup: asked });
    return readIn(bike, setupAs({ asked: setup, found: built.setup, measuredAs: start.setup }), ride);
  };
  const after = readAs(to);
  return from === null ? after : difference(readAs(from), after);
}

function difference(before: Figures, after: Figures): Figures {
  return before.map((a, i) => {
    const b = after[i];
    return a === null || b === null ? null : b - a;
  });
}

function readIn(bike: Bike, setup: Setup, ride: RideStateKey): Figures {
  const stood = standBike(bike, setup, ride);
  return read(stood.ok ? stood : null);
}

function read(stood: StandingBike | null): Figures {
  return READINGS.map(({ quantity, read: readOne }) => {
    const value = stood === null ? null : readOne(stood);
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
