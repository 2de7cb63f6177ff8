/** What each adjuster did to the readings: a change split among the adjusters that were turned, so that the parts add up. */
import { ADJUSTERS } from '../adjusters/all-adjusters.ts';
import { isAdjusterChanged } from '../adjusters/changed-adjusters.ts';
import type { AdjusterKey, Setup } from '../adjusters/setup.ts';
import type { Bike } from '../parts/bike.ts';
import { antiSquat } from '../readings/anti-squat.ts';
import { finalDriveRatio } from '../readings/final-drive-ratio.ts';
import { frontTravel } from '../readings/front-travel.ts';
import { rake } from '../readings/rake.ts';
import type { Reading } from '../readings/reading.ts';
import { rearTravel } from '../readings/rear-travel.ts';
import { seatHeight } from '../readings/seat-height.ts';
import { swingarmAngle } from '../readings/swingarm-angle.ts';
import { trail } from '../readings/trail.ts';
import { wheelbase } from '../readings/wheelbase.ts';
import type { StandingBike } from '../riding/stand-bike.ts';
import type { Split } from './why.ts';

/** The readings whose change is explained. */
export const EXPLAINED = {
  rake,
  trail,
  wheelbase,
  seatHeight,
  swingarmAngle,
  antiSquat,
  finalDriveRatio,
  frontTravel,
  rearTravel,
} satisfies Readonly<Record<string, Reading>>;

export type ExplainedKey = keyof typeof EXPLAINED;

/** An adjuster, or `bike` for all figures of the bike itself together. */
export type AdjusterCause = AdjusterKey | 'bike';

/** A reading before and after, in its core unit, and what each cause did; no parts where none stands between the two. */
export interface AdjusterSplit extends Split<AdjusterCause> {
  readonly key: ExplainedKey;
}

/** A bike with its setup, and how it stands. */
export interface StoodSetup {
  readonly bike: Bike;
  readonly setup: Setup;
  readonly stance: StandingBike;
}

type StandAgain = (asSet: { readonly bike: Bike; readonly setup: Setup }) => StandingBike | null;

const KEYS = Object.keys(EXPLAINED) as ExplainedKey[];
/** Causes of which every order is tried: 120 orders of 32 bikes at most. Of more, each comes first and last once. */
const MOST_IN_EVERY_ORDER = 5;

/**
 * The change of each explained reading from one stand to another, in the reading's core unit, split among what was
 * changed: each adjuster gets the mean, over the orders in which they could have been turned, of what it did when its
 * turn came (the Shapley value, L. Shapley 1953), so the parts add up to the change to rounding. `stand` stands a bike
 * in between, or gives null where it does not stand; an order through such a bike is left out. A reading without a
 * number before or after has no row; one without any order left has no parts.
 */
export function splitByAdjuster(before: StoodSetup, after: StoodSetup, stand: StandAgain): AdjusterSplit[] {
  const causes = causesBetween(before, after);
  const between = bikesBetween(before, after, causes, stand);
  const orders = ordersOf(causes.length);
  return KEYS.flatMap((key): AdjusterSplit[] => {
    const read = (set: number): number | null => numberOf(EXPLAINED[key], between(set));
    const first = numberOf(EXPLAINED[key], before.stance);
    const last = numberOf(EXPLAINED[key], after.stance);
    if (first === null || last === null) return [];
    const sums = causes.map(() => 0);
    let counted = 0;
    for (const order of orders) {
      const steps = stepsAlong(order, read);
      if (steps === null) continue;
      counted++;
      order.forEach((cause, i) => (sums[cause] += steps[i]));
    }
    const parts = counted === 0 ? [] : causes.map((cause, i) => ({ cause, amount: sums[i] / counted }));
    return [{ key, before: first, after: last, parts }];
  });
}

function numberOf(reading: Reading, stance: StandingBike | null): number | null {
  const value = stance === null ? null : reading.read(stance);
  return typeof value === 'number' ? value : null;
}

function causesBetween(before: StoodSetup, after: StoodSetup): AdjusterCause[] {
  const turned = ADJUSTERS.flatMap(({ key }) =>
    isAdjusterChanged(key, after.setup, before.setup) ? [key] : [],
  );
  const drawnAnew = before.bike !== after.bike && JSON.stringify(before.bike) !== JSON.stringify(after.bike);
  return drawnAnew ? [...turned, 'bike'] : turned;
}

/** The bike with a set of the causes at work, each a bit; every set is stood once. */
function bikesBetween(
  before: StoodSetup,
  after: StoodSetup,
  causes: readonly AdjusterCause[],
  stand: StandAgain,
): (set: number) => StandingBike | null {
  const whole = 2 ** causes.length - 1;
  const stood = new Map<number, StandingBike | null>([
    [0, before.stance],
    [whole, after.stance],
  ]);
  return (set) => {
    const known = stood.get(set);
    if (known !== undefined) return known;
    const at = causes.filter((_, bit) => Math.floor(set / 2 ** bit) % 2 === 1);
    const turned = Object.fromEntries(
      at.flatMap((cause) => (cause === 'bike' ? [] : [[cause, after.setup[cause]]])),
    ) as Partial<Setup>;
    const found = stand({
      bike: at.includes('bike') ? after.bike : before.bike,
      setup: { ...before.setup, ...turned },
    });
    stood.set(set, found);
    return found;
  };
}

/** What each cause of an order did when its turn came; null where one of the bikes has no number. */
function stepsAlong(order: readonly number[], read: (set: number) => number | null): number[] | null {
  const steps: number[] = [];
  let set = 0;
  let value = read(set);
  for (const cause of order) {
    set += 2 ** cause;
    const next = read(set);
    if (value === null || next === null) return null;
    steps.push(next - value);
    value = next;
  }
  return steps;
}

/** The orders of so many causes: all of a few; of many, each turn of the list and its reverse. */
function ordersOf(count: number): number[][] {
  const list = Array.from({ length: count }, (_, i) => i);
  if (count <= MOST_IN_EVERY_ORDER) return everyOrder(list);
  return list.flatMap((from) => {
    const turned = [...list.slice(from), ...list.slice(0, from)];
    return [turned, [...turned].reverse()];
  });
}

function everyOrder(list: readonly number[]): number[][] {
  if (list.length === 0) return [[]];
  return list.flatMap((first) =>
    everyOrder(list.filter((each) => each !== first)).map((rest) => [first, ...rest]),
  );
}
