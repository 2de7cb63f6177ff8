/** What one step of every adjuster does to every reading: each step is really tried. */
import { ADJUSTERS, type Adjuster } from '../adjusters/all-adjusters.ts';
import type { Setup } from '../adjusters/setup.ts';
import { why, type Why } from '../effects/why.ts';
import type { Bike } from '../parts/bike.ts';
import { byDiameter, tyresForRim } from '../parts/common-tyres.ts';
import { READINGS } from '../readings/all-readings.ts';
import { metricReading } from '../readings/metric-reading.ts';
import type { RideStateKey } from '../riding/states/all-ride-states.ts';
import { standBike, type StandingBike } from '../riding/stand-bike.ts';
import { QUANTITIES } from '../units/all-quantities.ts';
import { searchable } from './prepare-adjusters.ts';
import type { PlanAdjusterKey, Setting } from './problem.ts';

/** A reading before and after a step, in its metric unit. */
export interface Moved {
  readonly reading: string;
  readonly before: number;
  readonly after: number;
}

/** One step of an adjuster, up or down; of a tyre to the next size that its rim takes. */
export interface StepTried {
  readonly adjuster: PlanAdjusterKey;
  readonly from: Setting;
  readonly to: Setting;
  /** The readings that have a number before and after, in their order. */
  readonly moved: readonly Moved[];
}

/** Readings that people compare first; of the rest many are the same thing seen another way. */
const COMPARED: readonly string[] = [
  'rake',
  'trail',
  'wheelbase',
  'seatHeight',
  'swingarmAngle',
  'antiSquat',
  'frontTravel',
  'rearTravel',
  'frontWeightShare',
  'chainSliderClearance',
];

/** Decimals kept of a value, as of every adjuster's. */
const DECIMALS = 6;

/**
 * Every adjuster of the bike, one step up and one down from where it stands, within its range, a tyre to the next larger
 * and smaller common size: all readings in the ride state before and after, the same to the last digit as when a hand
 * turns it. A step with which the bike does not stand is left out; empty where the bike does not stand as it is set.
 */
export function whatMovesWhat(bike: Bike, setup: Setup, state: RideStateKey): StepTried[] {
  const before = standBike(bike, setup, state);
  if (!before.ok) return [];
  const was = valuesOf(before);
  return ADJUSTERS.flatMap((adjuster): StepTried[] => {
    const own = stepsOf(adjuster, bike, setup);
    if (own === null) return [];
    const { key, from, steps } = own;
    return steps.flatMap((to): StepTried[] => {
      const after = standBike(bike, { ...setup, [key]: to }, state);
      if (!after.ok) return [];
      const is = valuesOf(after);
      const moved = READINGS.flatMap(({ key: reading }, i): Moved[] => {
        const [b, a] = [was[i], is[i]];
        return b === null || a === null ? [] : [{ reading, before: b, after: a }];
      });
      return [{ adjuster: key, from, to, moved }];
    });
  });
}

/** Where an adjuster stands and one step up and down from there; null where it does not go by steps on this bike. */
function stepsOf(
  adjuster: Adjuster,
  bike: Bike,
  setup: Setup,
): { readonly key: PlanAdjusterKey; readonly from: Setting; readonly steps: readonly Setting[] } | null {
  if (adjuster.holds === 'tyre') {
    const { key } = adjuster;
    const fitted = setup[key];
    const sizes = byDiameter([fitted, ...tyresForRim(key, fitted)]);
    const at = sizes.indexOf(fitted);
    return {
      key,
      from: fitted,
      steps: [...sizes.slice(at + 1, at + 2), ...sizes.slice(Math.max(0, at - 1), at)],
    };
  }
  const own = searchable(adjuster, bike, setup);
  if ('ok' in own) return null;
  const { key, start, least, most, step } = own;
  const steps = [start + step, start - step]
    .map((turned) => Number(turned.toFixed(DECIMALS)))
    .filter((to) => to >= least && to <= most);
  return { key, from: start, steps };
}

/** What a step does to the bike in a ride state, cause by cause; null where it does not stand before or after. */
export function whyStep(
  bike: Bike,
  setup: Setup,
  state: RideStateKey,
  { adjuster, to }: Pick<StepTried, 'adjuster' | 'to'>,
): Why | null {
  const before = standBike(bike, setup, state);
  const after = standBike(bike, { ...setup, [adjuster]: to }, state);
  return before.ok && after.ok ? why(before, after) : null;
}

function valuesOf(on: StandingBike): (number | null)[] {
  return READINGS.map((reading) => {
    const value = metricReading(reading, on);
    return typeof value === 'number' ? value : null;
  });
}

/** How far a step moves a reading, in changes that a rider notices. */
export function noticedMove({ reading, before, after }: Moved): number {
  const { noticed } = QUANTITIES[READINGS.find(({ key }) => key === reading)?.quantity ?? 'count'];
  return Math.abs(after - before) / noticed;
}

/** How far a step moves one reading, and how much of all that it moves that is. */
export function aimOf(step: StepTried, wished: string): { readonly move: number; readonly part: number } {
  let move = 0;
  let all = 0;
  for (const moved of step.moved) {
    const noticed = noticedMove(moved);
    if (moved.reading === wished) move = noticed;
    if (moved.reading === wished || COMPARED.includes(moved.reading)) all += noticed;
  }
  return { move, part: all === 0 ? 0 : move / all };
}

/** Less of a move than this, in changes that a rider notices, is none. */
const NO_MOVE = 0.01;

/**
 * The steps in the order in which they move the wished reading and leave the rest: by how much of all that a step
 * moves the wished reading is. Steps that leave the wished reading come last, in the order of the adjusters.
 */
export function sortedByAim(steps: readonly StepTried[], wished: string): StepTried[] {
  const aims = new Map(steps.map((step) => [step, aimOf(step, wished)]));
  const partOf = (step: StepTried): number => {
    const { move, part } = aims.get(step) ?? { move: 0, part: 0 };
    return move < NO_MOVE ? 0 : part;
  };
  return [...steps].sort((a, b) => partOf(b) - partOf(a));
}

/** What a step moves most beside the wished reading, of what people compare first; the most first. */
export function movedBeside({ moved }: StepTried, wished: string, count: number): Moved[] {
  return moved
    .filter(({ reading }) => reading !== wished && COMPARED.includes(reading))
    .filter((each) => noticedMove(each) >= NO_MOVE)
    .sort((a, b) => noticedMove(b) - noticedMove(a))
    .slice(0, count);
}
