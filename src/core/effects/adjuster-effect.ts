/** What an adjuster does in the ride state shown: how far it raises its end or changes a reading, or that it does nothing there. */
import type { Adjuster, NumberAdjuster } from '../adjusters/all-adjusters.ts';
import type { AdjusterKey, Setup } from '../adjusters/setup.ts';
import type { Bike } from '../parts/bike.ts';
import { READINGS } from '../readings/all-readings.ts';
import { metricReading } from '../readings/metric-reading.ts';
import type { Reading } from '../readings/reading.ts';
import { RIDE_STATES, type RideStateKey } from '../riding/states/all-ride-states.ts';
import { standBike, type StandingBike } from '../riding/stand-bike.ts';
import { adjusterRange } from '../standing/adjuster-range.ts';
import { heightPlace, heightRise, heightsAt, type HeightPlace } from './height-places.ts';

/** Stands the bike with another setup in one ride state; null where it does not stand. */
export type StandWith = (setup: Setup) => StandingBike | null;

export interface HeightEffect {
  readonly place: HeightPlace;
  /** How high the place stands above the ground before and after, mm. */
  readonly before: number;
  readonly after: number;
}

/** Where each end's height is looked at first. */
const LOOKED_AT = { front: heightPlace('front'), rear: heightPlace('seat') };

/**
 * How far one adjuster alone, turned from `from` to `to`, raises its end, everything else as in `setup`; mm, positive
 * upward. Null where it moves no end, or the bike does not stand with either value.
 */
export function heightEffect(
  adjuster: Adjuster,
  setup: Setup,
  from: Setup[AdjusterKey],
  to: Setup[AdjusterKey],
  stand: StandWith,
): HeightEffect | null {
  if (adjuster.moves === undefined) return null;
  const before = stand({ ...setup, [adjuster.key]: from });
  const after = stand({ ...setup, [adjuster.key]: to });
  if (before === null || after === null) return null;
  const place = LOOKED_AT[adjuster.moves.end];
  return { place, ...heightsAt(place, before, after) };
}

/**
 * How far the place of an effect rose from one whole setup to another, mm, positive upward. Null where the bike does not
 * stand with either.
 */
export function heightBetween(
  { place }: HeightEffect,
  from: Setup,
  to: Setup,
  stand: StandWith,
): HeightEffect | null {
  const [before, after] = [stand(from), stand(to)];
  return before === null || after === null ? null : { place, ...heightsAt(place, before, after) };
}

/** A reading before and after an adjuster was turned, in its metric unit. */
export interface ReadingEffect {
  readonly reading: Reading;
  readonly before: number;
  readonly after: number;
}

/**
 * What one adjuster alone, turned from `from` to `to`, changes of its reading, everything else as in `setup`. Null where it
 * has none, the bike does not stand with either value, or the reading has no number there.
 */
export function readingEffect(
  adjuster: Adjuster,
  setup: Setup,
  from: Setup[AdjusterKey],
  to: Setup[AdjusterKey],
  stand: StandWith,
): ReadingEffect | null {
  const reading = READINGS.find(({ key }) => key === adjuster.reading);
  if (reading === undefined) return null;
  const before = stand({ ...setup, [adjuster.key]: from });
  const after = stand({ ...setup, [adjuster.key]: to });
  if (before === null || after === null) return null;
  const [was, is] = [metricReading(reading, before), metricReading(reading, after)];
  return typeof was === 'number' && typeof is === 'number' ? { reading, before: was, after: is } : null;
}

/** Two values of a reading nearer than this part of their size are the same: a search for a rest is no more exact. */
const SAME = 1e-7;

/** Whether a step of an adjuster moves its end or, where it moves none, changes any reading. Null where the bike stands with neither value. */
function doesAct(adjuster: NumberAdjuster, bike: Bike, setup: Setup, stand: StandWith): boolean | null {
  const { most, step } = adjusterRange(adjuster, bike, setup);
  const value = setup[adjuster.key];
  const before = stand(setup);
  const after = stand({ ...setup, [adjuster.key]: value + step <= most ? value + step : value - step });
  if (before === null && after === null) return null;
  if (before === null || after === null) return true;
  if (adjuster.moves !== undefined)
    return Math.abs(heightRise(LOOKED_AT[adjuster.moves.end], before, after)) > SAME;
  return READINGS.some(({ read }) => {
    const was = read(before);
    const is = read(after);
    if (typeof was !== 'number' || typeof is !== 'number') return was !== is;
    return Math.abs(is - was) > SAME * Math.max(1, Math.abs(was));
  });
}

/** A ride state's nearness to what people ask first: at rest with the rider on board. */
const ASKED_FIRST: RideStateKey = 'riderUp';

/**
 * The ride state to look at instead, where a step of the adjuster does nothing in the state that `stand` stands it in;
 * `none` where it acts in no state. Null where it acts there, or the bike does not stand.
 */
export function stateToSeeIt(
  adjuster: NumberAdjuster,
  bike: Bike,
  setup: Setup,
  stand: StandWith,
): RideStateKey | 'none' | null {
  if (doesAct(adjuster, bike, setup, stand) !== false) return null;
  const states = [ASKED_FIRST, ...RIDE_STATES.map(({ key }) => key)];
  const found = states.find(
    (state) =>
      doesAct(adjuster, bike, setup, (asked) => {
        const on = standBike(bike, asked, state);
        return on.ok ? on : null;
      }) === true,
  );
  return found ?? 'none';
}
