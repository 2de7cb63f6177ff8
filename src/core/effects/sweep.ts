/** A reading as a curve: against travel, against an adjuster, or against teeth. */
import type { Bike } from '../parts/bike.ts';
import { adjusterOf } from '../adjusters/all-adjusters.ts';
import type { NoStand } from '../riding/no-stand.ts';
import type { NumberAdjusterKey, Setup } from '../adjusters/setup.ts';
import type { Absent } from '../readings/absent.ts';
import { metricReading } from '../readings/metric-reading.ts';
import type { Reading } from '../readings/reading.ts';
import { machine, type Machine } from '../standing/machine.ts';
import type { RideStateKey } from '../riding/states/all-ride-states.ts';
import { sprungMachine, type SprungMachine } from '../springs/sprung-machine.ts';
import { stance, type Stance, type Travel } from '../standing/stance.ts';
import { standMachine, type StandingBike } from '../riding/stand-bike.ts';
import { QUANTITIES, type QuantityKey } from '../units/all-quantities.ts';

/**
 * What is varied. Rear travel is that of the axle, front travel that along the legs, mm from topped out. Together, x is
 * the rear travel and the front uses `frontPerRear` mm for each mm of it. An adjuster is in its own metric unit; teeth are
 * whole.
 */
export type SweepAxis =
  | { readonly kind: 'travel'; readonly end: 'front' | 'rear' }
  | { readonly kind: 'travel'; readonly end: 'both'; readonly frontPerRear: number }
  | { readonly kind: 'adjuster'; readonly adjuster: NumberAdjusterKey };

export interface SweepAsked {
  readonly bike: Bike;
  readonly setup: Setup;
  /** Travel used where it is not varied, mm. */
  readonly travel: Travel;
  /**
   * The ride state at each place of an adjuster: one that the springs carry settles anew at every place. Left out, and on
   * an axis of travel, the bike stands with `travel`.
   */
  readonly state?: RideStateKey;
  /**
   * On an axis of travel, the bike as it stands somewhere: with its machine, its springs and what it carries, instead
   * of a machine made anew. Its setup has to be `setup`.
   */
  readonly as?: StandingBike;
  readonly axis: SweepAxis;
  readonly from: number;
  readonly to: number;
  /** Even places from `from` to `to`; for teeth every whole count between is taken instead. */
  readonly count: number;
}

/** Where a curve stops short of its range, and why the bike has no pose there. */
export interface SweepStop {
  readonly x: number;
  readonly noStand: NoStand;
}

/** One reading along an axis, in the metric units of files: mm, deg, kg, g, %. */
export interface Curve {
  readonly key: string;
  readonly xQuantity: QuantityKey;
  readonly xUnit: string;
  readonly yQuantity: QuantityKey;
  readonly yUnit: string;
  readonly x: readonly number[];
  readonly y: readonly (number | Absent)[];
  readonly lowStop: SweepStop | null;
  readonly highStop: SweepStop | null;
}

/** Most places of one sweep: more than any screen has columns. */
const MOST_PLACES = 5000;

function places({ axis, from, to, count }: SweepAsked): number[] {
  const low = Math.min(from, to);
  const high = Math.max(from, to);
  if (!Number.isFinite(high - low)) return [];
  const least = Math.ceil(low);
  if (axisQuantity(axis) === 'teeth')
    return Array.from(
      { length: Math.max(0, Math.min(MOST_PLACES, Math.floor(high) - least + 1)) },
      (_, i) => least + i,
    );
  const all = Math.min(MOST_PLACES, Math.max(2, Math.round(count)));
  return Array.from({ length: all }, (_, i) => (i === all - 1 ? high : low + ((high - low) * i) / (all - 1)));
}

function axisQuantity(axis: SweepAxis): QuantityKey {
  if (axis.kind === 'travel') return 'length';
  return adjusterOf(axis.adjuster).quantity;
}

/** Where on the axis the present setup and travel are. */
export function sweepPlace(axis: SweepAxis, setup: Setup, travel: Travel): number {
  if (axis.kind === 'adjuster') return setup[axis.adjuster];
  return axis.end === 'front' ? travel.front : travel.rear;
}

/** The setup and travel at one place of an axis, the rest staying as it is: what a cursor on the curve shows. */
export function sweptTo(
  axis: SweepAxis,
  x: number,
  setup: Setup,
  travel: Travel,
): { readonly setup: Setup; readonly travel: Travel } {
  if (axis.kind === 'adjuster') return { setup: { ...setup, [axis.adjuster]: x }, travel };
  if (axis.end === 'both') return { setup, travel: { front: x * axis.frontPerRear, rear: x } };
  return { setup, travel: { ...travel, [axis.end]: x } };
}

/**
 * How the bike stands at a place of the axis, or why it does not: what a sweep asks at each of its places. What does not
 * change along the axis is made once. `near` is a travel near which to look first.
 */
export function standingAlong(
  asked: Omit<SweepAsked, 'from' | 'to' | 'count'>,
): (x: number, near?: Travel) => StandingBike | NoStand {
  const { axis, bike, setup, travel, state, as } = asked;
  if (axis.kind === 'adjuster')
    return (x, near) => {
      const at = sweptTo(axis, x, setup, travel);
      const made = machine(bike, at.setup);
      if (!made.ok) return made;
      if (state !== undefined) return standMachine(made, at.setup, state, near);
      return withSprings(stance(made, at.travel), sprungMachine(made));
    };
  const made: Machine | NoStand = as?.machine ?? machine(bike, setup);
  if (!made.ok) return () => made;
  const sprung = as?.sprung ?? sprungMachine(made);
  return (x) => withSprings(stance(made, sweptTo(axis, x, setup, travel).travel), sprung);
}

/** What is taken of the bike at each place of an axis where it stands, and what ends that stretch. */
interface Stretch<Taken> {
  readonly x: readonly number[];
  readonly taken: readonly Taken[];
  readonly lowStop: SweepStop | null;
  readonly highStop: SweepStop | null;
}

/** `take` gets each bike at once and nothing else holds it, so that a curve need not keep hundreds of them. */
function along<Taken>(asked: SweepAsked, take: (on: StandingBike) => Taken): Stretch<Taken> {
  const { axis, setup, travel } = asked;
  const all = places(asked);
  const standsAt = standingAlong(asked);
  let near: Travel | undefined;
  const found = all.map((x): { readonly ok: true; readonly taken: Taken } | NoStand => {
    const on = standsAt(x, near);
    // Each place begins where the one before came to rest, so that a falling rate makes no curve jump.
    near = on.ok ? on.travel : undefined;
    return on.ok ? { ok: true, taken: take(on) } : on;
  });
  const [first, last] = nearestStretch(found, all, sweepPlace(axis, setup, travel));
  const stopAt = (i: number): SweepStop | null => {
    const there = found[i];
    return there === undefined || there.ok ? null : { x: all[i], noStand: there };
  };
  return {
    x: all.slice(first, last + 1),
    taken: found.slice(first, last + 1).flatMap((at) => (at.ok ? [at.taken] : [])),
    lowStop: stopAt(first <= last ? first - 1 : 0),
    highStop: stopAt(first <= last ? last + 1 : all.length - 1),
  };
}

/**
 * One reading at even places of an axis. Where the bike has no pose the curve stops and says why: of the stretches that
 * stand, the one nearest to the present place is kept. Empty, with both stops, when it stands nowhere in the range. Where
 * the reading has no number its reason stands in its place.
 */
export function curveAlong(asked: SweepAsked, reading: Reading): Curve {
  const { taken, ...stretch } = along(asked, (on) => metricReading(reading, on));
  return { ...unitsOf(axisQuantity(asked.axis), reading), ...stretch, y: taken };
}

function unitsOf(
  xQuantity: QuantityKey,
  { key, quantity }: Reading,
): Pick<Curve, 'key' | 'xQuantity' | 'xUnit' | 'yQuantity' | 'yUnit'> {
  return {
    key,
    xQuantity,
    xUnit: QUANTITIES[xQuantity].fileUnit,
    yQuantity: quantity,
    yUnit: QUANTITIES[quantity].fileUnit,
  };
}

function withSprings(on: Stance | NoStand, sprung: SprungMachine | NoStand): StandingBike | NoStand {
  return on.ok && sprung.ok ? { sprung, ...on } : on;
}

/** First and last place of the stretch without a gap that comes nearest to the present place; [0, −1] when none stands. */
function nearestStretch(
  found: readonly { readonly ok: boolean }[],
  x: readonly number[],
  present: number,
): readonly [number, number] {
  let nearest = -1;
  found.forEach((on, i) => {
    if (on.ok && (nearest < 0 || Math.abs(x[i] - present) < Math.abs(x[nearest] - present))) nearest = i;
  });
  if (nearest < 0) return [0, -1];
  let first = nearest;
  let last = nearest;
  while (first > 0 && found[first - 1].ok) first--;
  while (last < found.length - 1 && found[last + 1].ok) last++;
  return [first, last];
}
