/** The readings of a fitted bike, each with its standard deviation, or the word that nothing fixes it. */
import type { Setup } from '../adjusters/setup.ts';
import type { Bike } from '../parts/bike.ts';
import { READINGS } from '../readings/all-readings.ts';
import type { Reading } from '../readings/reading.ts';
import { standMachine, type StandingBike } from '../riding/stand-bike.ts';
import { machine, type Machine } from '../standing/machine.ts';
import { QUANTITIES } from '../units/all-quantities.ts';
import { buildBike, withoutRider } from './held/build-bike.ts';
import type { Fit } from './fit-values.ts';
import { postureOf, sinksOn } from './held/hold-bike.ts';
import type { MeasuredReading } from './measured-bike.ts';
import type { StartingBike } from './held/starting-bike.ts';
import { isOfPhoto } from './held/unknowns.ts';
import { moved } from './row-figures.ts';
import { measureStateOf } from './held/all-measure-states.ts';
import type { Origin, TyreSinks } from './held/unknowns.ts';

/** Step of the differences, mm or mrad: rounding stays below 1e-8 of what the readings carry. */
const STEP = 0.02;
/** A change below this part of a reading is rounding. */
const ROUNDING = 1e-9;
/** A slope along a free direction below this part of the whole slope is rounding. */
const FREE_SLOPE = 1e-6;
/** Wider than this a reading says nothing, by its file unit. */
const WIDEST: Readonly<Record<string, number>> = { mm: 50, deg: 5 };
/** The same for all other units: per cent, kg, N/mm. */
const WIDEST_ELSE = 500;

/** The standard deviation beyond which a reading in this file unit is not fixed. */
export function widestOf(fileUnit: string): number {
  return WIDEST[fileUnit] ?? WIDEST_ELSE;
}

/** Stands a bike in the posture that it was measured in, with the rider only where a rider sat on it and tyres as they sank there. */
export function standMeasured({ bike, setup }: StartingBike, origin: Origin): StandingBike | null {
  const { readIn } = origin;
  const asMeasured: Setup = measureStateOf(readIn).fork === 'rider' ? setup : withoutRider(setup);
  const made = machine(bike, asMeasured);
  if (!made.ok) return null;
  const stood = standMachine(sunkAs(made, sinksOn(origin, readIn)), asMeasured, 'travelByHand');
  return stood.ok ? stood : null;
}

/** The machine on tyres that have sunk so far; its free radii stay those of its tyres. */
export function sunkAs(made: Machine, { front, rear }: TyreSinks): Machine {
  if (made.tyres === null) return made;
  return { ...made, frontRadius: made.frontRadius - front, rearRadius: made.rearRadius - rear };
}

/** The bike of these values standing as it was measured; null where it does not stand. */
function standValues(origin: Origin, values: readonly number[]): StandingBike | null {
  const built = buildBike(postureOf(origin, values));
  return built === null ? null : standMeasured(built, origin);
}

/** Readings of a standing bike in their file units; null where it has none. */
function readAll(stood: StandingBike, readings: readonly Reading[]): (number | null)[] {
  return readings.map(({ quantity, read }) => {
    const found = read(stood);
    if (typeof found !== 'number') return null;
    const value = QUANTITIES[quantity].fromCore(found);
    return Number.isFinite(value) ? value : null;
  });
}

/** Readings in their file units by the values of the fit; null where the bike does not stand. */
export function readValues(
  origin: Origin,
  values: readonly number[],
  readings: readonly Reading[],
): readonly (number | null)[] | null {
  const stood = standValues(origin, values);
  return stood === null ? null : readAll(stood, readings);
}

/** Change of each reading per unit of one unknown; null where a reading has none on either side. */
export function readingSlopes(
  origin: Origin,
  values: readonly number[],
  place: number,
  readings: readonly Reading[],
): readonly (number | null)[] {
  const ahead = readValues(origin, moved(values, place, STEP), readings);
  const back = readValues(origin, moved(values, place, -STEP), readings);
  return readings.map((_, i) => {
    const a = ahead?.[i] ?? null;
    const b = back?.[i] ?? null;
    return a === null || b === null ? null : (a - b) / (2 * STEP);
  });
}

/** Every reading of the fitted bike; null where the bike does not stand. */
export function measuredReadings(fit: Fit): Record<string, MeasuredReading> | null {
  const { origin, values, touched } = fit;
  const now = readValues(origin, values, READINGS);
  if (now === null) return null;
  const loose = looseReadings(fit, now);
  const still = READINGS.map(() => 0);
  const slopes = touched.map((place) =>
    isOfPhoto(origin.unknowns[place].key) ? still : readingSlopes(origin, values, place, READINGS),
  );
  return Object.fromEntries(
    READINGS.map(({ key, quantity }, i): [string, MeasuredReading] => {
      const unit = QUANTITIES[quantity].fileUnit;
      const value = now[i];
      const along = slopes.map((each) => each[i]);
      const u = value === null || loose[i] ? null : spread(fit, along);
      const fixed = u !== null && u <= widestOf(unit);
      return [key, { value, unit, u: fixed ? u : null, fixed }];
    }),
  );
}

/** Standard deviation that slopes by the touched unknowns carry; null where a free direction changes the figure. */
export function spread(fit: Pick<Fit, 'parts' | 'rank'>, slopes: readonly (number | null)[]): number | null {
  const along = alongFixed(fit, slopes);
  return along === null ? null : Math.hypot(...along);
}

/**
 * Slopes by the touched unknowns as slopes along the fixed directions, each in its standard deviation: what two figures
 * have in common is the product of theirs. Null where a free direction changes the figure.
 */
export function alongFixed(
  { parts, rank }: Pick<Fit, 'parts' | 'rank'>,
  slopes: readonly (number | null)[],
): readonly number[] | null {
  if (slopes.includes(null)) return null;
  const size = Math.hypot(...slopes.map((each) => each ?? 0));
  const found: number[] = [];
  for (const [k, right] of parts.right.entries()) {
    let along = 0;
    for (let j = 0; j < right.length; j++) along += right[j] * (slopes[j] ?? 0);
    if (k < rank) found.push(along / parts.values[k]);
    else if (Math.abs(along) > FREE_SLOPE * Math.max(size, FREE_SLOPE)) return null;
  }
  return found;
}

/** Which readings depend on something that no row touches: another unknown, or springs and travel of the start. */
function looseReadings(fit: Fit, now: readonly (number | null)[]): readonly boolean[] {
  const { origin, values, touched } = fit;
  const known = new Set(touched);
  // Each by another amount, so that no two changes cancel.
  const away = values.map((value, place) =>
    known.has(place) ? value : value + STEP * (1 + (place % 7) / 10),
  );
  const elsewhere = readValues(origin, away, READINGS);
  const built = buildBike(postureOf(origin, values));
  const stood = built === null ? null : standMeasured(withOtherSprings(built), origin);
  const sprung = stood === null ? null : readAll(stood, READINGS);
  return now.map((value, i) => {
    if (value === null) return false;
    return [elsewhere, sprung].some((others) => {
      const other = others?.[i] ?? null;
      return other === null || Math.abs(other - value) > ROUNDING * (1 + Math.abs(value));
    });
  });
}

/** A little more of what no tape reaches: springs, travel, tables and limits, which stay those of the start. */
export function withOtherSprings({ bike, setup }: StartingBike): StartingBike {
  const more = 1.0001;
  const { swingarm, fork, frame } = bike;
  const other: Bike = {
    ...bike,
    frame: {
      ...frame,
      guideRadius: frame.guideRadius === null ? null : frame.guideRadius * more,
      lowerGuideRadius: frame.lowerGuideRadius === null ? null : frame.lowerGuideRadius * more,
    },
    fork: {
      ...fork,
      travel: fork.travel * more,
      leastHeight: fork.leastHeight === null ? null : fork.leastHeight + more,
      lowerClampDepth: fork.lowerClampDepth === null ? null : fork.lowerClampDepth * more,
    },
    swingarm: {
      ...swingarm,
      wheelTravel: swingarm.wheelTravel * more,
      travelTable: swingarm.travelTable.map((row) => ({ ...row, shockStroke: row.shockStroke * more })),
    },
  };
  return {
    bike: other,
    setup: {
      ...setup,
      forkSpringRate: setup.forkSpringRate * more,
      shockSpringRate: setup.shockSpringRate * more,
      forkPreload: setup.forkPreload * more,
      shockPreload: setup.shockPreload * more,
    },
  };
}
