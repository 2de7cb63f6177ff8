/** Turns of adjusters from however a bike stands: by an amount, by a factor, to a value, or until a reading is back where it was. */
import { adjusterOf } from '../adjusters/all-adjusters.ts';
import { doesApply } from '../adjusters/does-apply.ts';
import type { NumberAdjusterKey, Setup } from '../adjusters/setup.ts';
import { chainFit } from '../chain/chain-fit.ts';
import type { Refusal } from '../numeric/refusal.ts';
import { solveBetween } from '../numeric/solve-between.ts';
import type { Bike } from '../parts/bike.ts';
import { READINGS } from '../readings/all-readings.ts';
import { metricReading } from '../readings/metric-reading.ts';
import type { RideStateKey } from '../riding/states/all-ride-states.ts';
import type { NoStand } from '../riding/no-stand.ts';
import { standBike } from '../riding/stand-bike.ts';
import { QUANTITIES } from '../units/all-quantities.ts';

/** A bike with its adjusters as set. */
export interface AsSet {
  readonly bike: Bike;
  readonly setup: Setup;
}

/** One turn, as data: `by` in the adjuster's metric unit, `times` of what it is, `to` a value, or until the reading `keep` is back. */
export type Turn = { readonly adjuster: NumberAdjusterKey } & (
  { readonly by: number } | { readonly times: number } | { readonly to: number } | { readonly keep: string }
);

/** Why a turn cannot be made, with the adjuster. */
export type NoTurn = Refusal<'adjusterNotThere' | 'readingNotKept', { readonly adjuster: NumberAdjusterKey }>;

export interface Turned {
  readonly ok: true;
  readonly setup: Setup;
}

/** How near a reading must come back, in parts of what a person can tell apart. */
const NEAR = 1e-3;
/** How far an adjuster is turned to bring a reading back, in its steps: half, then all of what a workshop would. */
const REACHES: readonly number[] = [8, 30, 60];

/**
 * The bike with the axle held where its chain has it, so that other sprockets move no axle. A bike without a chain of
 * named links is given back as it is. Always has an answer.
 */
export function axleHeld({ bike, setup }: AsSet): AsSet {
  if (setup.chainLinks === null) return { bike, setup };
  const place = chainFit(bike, setup, setup.chainLinks);
  return place.ok
    ? { bike, setup: { ...setup, chainLinks: null, axlePosition: place.axlePosition } }
    : { bike, setup };
}

/**
 * A setup after turns, one after the other; readings are kept in the ride state given. Metric units, degrees for angles. No answer
 * where the bike has no such adjuster, does not stand, or no turn brings the reading back.
 */
export function turned(
  { bike, setup }: AsSet,
  turns: readonly Turn[],
  state: RideStateKey,
): Turned | NoTurn | NoStand {
  let now = setup;
  for (const turn of turns) {
    const { adjuster } = turn;
    if (!doesApply(adjusterOf(adjuster), bike, now))
      return { ok: false, reason: 'adjusterNotThere', adjuster };
    if ('by' in turn) now = { ...now, [adjuster]: now[adjuster] + turn.by };
    else if ('to' in turn) now = { ...now, [adjuster]: turn.to };
    else if ('times' in turn) now = { ...now, [adjuster]: now[adjuster] * turn.times };
    else {
      const kept = turnedBack({ bike, setup: now }, setup, turn, state);
      if (!kept.ok) return kept;
      now = kept.setup;
    }
  }
  return { ok: true, setup: now };
}

/** Turns one adjuster until a reading is what it was with the first setup. */
function turnedBack(
  { bike, setup }: AsSet,
  first: Setup,
  { adjuster, keep }: Extract<Turn, { readonly keep: string }>,
  state: RideStateKey,
): Turned | NoTurn | NoStand {
  const reading = READINGS.find(({ key }) => key === keep);
  if (reading === undefined) return { ok: false, reason: 'readingNotKept', adjuster };
  const readAt = (asSet: Setup): number => {
    const on = standBike(bike, asSet, state);
    const value = on.ok ? metricReading(reading, on) : Number.NaN;
    return typeof value === 'number' ? value : Number.NaN;
  };
  const goal = readAt(first);
  const from = setup[adjuster];
  const miss = (value: number): number => readAt({ ...setup, [adjuster]: value }) - goal;
  const { holds } = adjusterOf(adjuster);
  const near = NEAR * QUANTITIES[reading.quantity].indistinct;
  if (holds === 'wholeNumber') {
    const values = REACHES.slice(0, 1).flatMap((reach) =>
      Array.from({ length: 2 * reach + 1 }, (_, index) => from + index - reach),
    );
    const [best] = values
      .map((value) => ({ value, miss: Math.abs(miss(value)) }))
      .filter((each) => Number.isFinite(each.miss))
      .sort((a, b) => a.miss - b.miss);
    return best === undefined || !(best.miss <= near)
      ? { ok: false, reason: 'readingNotKept', adjuster }
      : { ok: true, setup: { ...setup, [adjuster]: best.value } };
  }
  const { range } = adjusterOf(adjuster);
  const step = typeof range.step === 'number' ? range.step : range.step(bike);
  for (const reach of REACHES)
    for (const [low, high] of [
      [from - reach * step, from],
      [from, from + reach * step],
    ]) {
      const root = solveBetween(miss, low, high, NEAR * step);
      if (root.status === 'solved') return { ok: true, setup: { ...setup, [adjuster]: root.x } };
    }
  return { ok: false, reason: 'readingNotKept', adjuster };
}
