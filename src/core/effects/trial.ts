/** A trial: something is turned on a bike, and one figure is read before and after. */
import type { Refusal } from '../numeric/refusal.ts';
import { READINGS } from '../readings/all-readings.ts';
import type { Absent } from '../readings/absent.ts';
import { metricReading } from '../readings/metric-reading.ts';
import type { RideStateKey } from '../riding/states/all-ride-states.ts';
import { standBike, type StandingBike } from '../riding/stand-bike.ts';
import { QUANTITIES } from '../units/all-quantities.ts';
import { isLess } from '../units/least-told.ts';
import { shownSteps, type NumberStyle } from '../units/number-style.ts';
import { antiSquatSpread } from './anti-squat-spread.ts';
import { cornerRadius } from './corner-radius.ts';
import { squatOnRoad } from './squat-on-road.ts';
import { turned, type AsSet, type NoTurn, type Turn } from './turn.ts';
import type { NoFigure, TrialFigure } from './trial-figure.ts';
import { wallLift } from './wall-lift.ts';

export const TRIAL_FIGURES: readonly TrialFigure[] = [wallLift, squatOnRoad, antiSquatSpread, cornerRadius];

/** Two figures differ where they read differently in metric units. */
const METRIC: NumberStyle = { system: 'metric', decimal: '.' };

export type Way = 'more' | 'less' | 'same';

/** What is turned, and the figure that is looked at, by its key. */
export interface Trial {
  /** Turned before the figure is read for the first time; nothing when left out. */
  readonly from?: readonly Turn[];
  readonly turns: readonly Turn[];
  readonly state: RideStateKey;
  readonly figure: string;
}

/** Something that this program does not have, as a trial from a file may name it. */
export type UnknownName = Refusal<'unknownAdjuster' | 'unknownRideState', { readonly name: string }>;

export type NoTrial = NoFigure | NoTurn | UnknownName | Refusal<'noSuchFigure'>;

/** The bike before and after, and the figure in its metric unit; a figure that is a change is 0 before. */
export interface Tried {
  readonly ok: true;
  readonly before: { readonly asSet: AsSet; readonly on: StandingBike; readonly value: number };
  readonly after: { readonly asSet: AsSet; readonly on: StandingBike; readonly value: number };
  readonly way: Way;
}

/** The figure of that key, of the readings and of those that only trials ask for; null where there is none. */
export function trialFigure(key: string): TrialFigure | null {
  const own = TRIAL_FIGURES.find((each) => each.key === key);
  if (own !== undefined) return own;
  const reading = READINGS.find((each) => each.key === key);
  if (reading === undefined) return null;
  const { label, quantity, more, less, belowZero, acrossZero, felt } = reading;
  const words = {
    more,
    less,
    ...(belowZero && { belowZero }),
    ...(acrossZero && { acrossZero }),
    ...(felt && { felt }),
  };
  const of = (_: AsSet, on: StandingBike): number | Absent => metricReading(reading, on);
  return { key, label, quantity, ...words, isChange: false, same: 'about the same', of };
}

/**
 * Which way a figure goes between two values, metric: `same` where both are written alike, and where no gauge and no rider
 * notices the change, unless zero lies between. A figure that is a change already goes as it is written. Always has an
 * answer.
 */
export function wayOf(
  { quantity, isChange }: Pick<TrialFigure, 'quantity' | 'isChange'>,
  before: number,
  after: number,
): Way {
  const change = after - before;
  const [was, is] = [before, after].map((value) => shownSteps(value, quantity, METRIC));
  if (was === is || Math.abs(change) < QUANTITIES[quantity].indistinct) return 'same';
  if (!isChange && before * after >= 0 && isLess(change, quantity)) return 'same';
  return change > 0 ? 'more' : 'less';
}

/**
 * Tries a trial on a bike as set: stands it before and after the turns in the trial's ride state and reads the figure.
 * Metric units. No answer, with the reason, where it does not stand, has no such adjuster, or the figure no number.
 */
export function tryOut(asSet: AsSet, { from = [], turns, state, figure: key }: Trial): Tried | NoTrial {
  const figure = trialFigure(key);
  if (figure === null) return { ok: false, reason: 'noSuchFigure' };
  const prepared = turned(asSet, from, state);
  if (!prepared.ok) return prepared;
  const before = { bike: asSet.bike, setup: prepared.setup };
  const made = turned(before, turns, state);
  if (!made.ok) return made;
  const after = { bike: asSet.bike, setup: made.setup };
  const onBefore = standBike(before.bike, before.setup, state);
  if (!onBefore.ok) return onBefore;
  const onAfter = standBike(after.bike, after.setup, state);
  if (!onAfter.ok) return onAfter;
  const valueBefore = figure.isChange ? 0 : figure.of(before, onBefore);
  if (typeof valueBefore !== 'number') return valueBefore;
  const valueAfter = figure.of(after, onAfter);
  if (typeof valueAfter !== 'number') return valueAfter;
  return {
    ok: true,
    before: { asSet: before, on: onBefore, value: valueBefore },
    after: { asSet: after, on: onAfter, value: valueAfter },
    way: wayOf(figure, valueBefore, valueAfter),
  };
}
