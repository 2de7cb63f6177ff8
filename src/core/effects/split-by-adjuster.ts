/** What each adjuster did to the readings: a change split among the adjusters that were turned, so that the parts add up. */
import { ADJUSTERS } from '../adjusters/all-adjusters.ts';
import { isAdjusterChanged } from '../adjusters/changed-adjusters.ts';
import type { AdjusterKey, Setup } from '../adjusters/setup.ts';
import { compareCauses } from '../adjusters/working-order.ts';
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
 * changed. Each cause gets what it did when its turn came: the bike's own figures first, then load and riding, then the
 * parts in the order in which a workshop turns them. So the parts add up to the change to rounding, and each is what the
 * steps of the work show one after the other. `stand` stands a bike in between, or gives null where it does not stand;
 * causes between which there is no number are shared out among the orders that have one, each its mean (the Shapley value,
 * L. Shapley 1953). A reading without a number before or after has no row; one without any such order has no parts.
 */
export function splitByAdjuster(before: StoodSetup, after: StoodSetup, stand: StandAgain): AdjusterSplit[] {
  const causes = causesBetween(before, after);
  const between = bikesBetween(before, after, causes, stand);
  return KEYS.flatMap((key): AdjusterSplit[] => {
    const read = (set: number): number | null => numberOf(EXPLAINED[key], between(set));
    const first = numberOf(EXPLAINED[key], before.stance);
    const last = numberOf(EXPLAINED[key], after.stance);
    if (first === null || last === null) return [];
    const parts = partsOf(causes, read);
    return [{ key, before: first, after: last, parts: parts ?? [] }];
  });
}

/** What each cause did, by its place in the list; null where no order has a number all along. */
function partsOf(
  causes: readonly AdjusterCause[],
  read: (set: number) => number | null,
): AdjusterSplit['parts'] | null {
  const parts: { cause: AdjusterCause; amount: number }[] = [];
  let from = 0;
  let together: number[] = [];
  for (const bit of causes.keys()) {
    together.push(bit);
    const to = together.reduce((set, each) => set + 2 ** each, from);
    if (read(to) === null) continue;
    const amounts = meanSteps(together, from, read);
    if (amounts === null) return null;
    together.forEach((each, i) => parts.push({ cause: causes[each], amount: amounts[i] }));
    from = to;
    together = [];
  }
  return parts;
}

/** What each of these causes did, the mean over their orders; null where none of those has a number all along. */
function meanSteps(
  together: readonly number[],
  from: number,
  read: (set: number) => number | null,
): number[] | null {
  const sums = together.map(() => 0);
  let counted = 0;
  for (const order of ordersOf(together.length)) {
    const steps = stepsAlong(
      order.map((place) => together[place]),
      from,
      read,
    );
    if (steps === null) continue;
    counted++;
    order.forEach((place, i) => (sums[place] += steps[i]));
  }
  return counted === 0 ? null : sums.map((sum) => sum / counted);
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
  const inOrder = turned.sort(compareCauses);
  return drawnAnew ? ['bike', ...inOrder] : inOrder;
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

/** What each cause of an order did when its turn came after `from`; null where one of the bikes has no number. */
function stepsAlong(
  order: readonly number[],
  from: number,
  read: (set: number) => number | null,
): number[] | null {
  const steps: number[] = [];
  let set = from;
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
