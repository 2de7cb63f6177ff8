/** One step of an adjuster, as a mechanic takes it: what it stands at, what the step makes of it, and the step's size. */
import type { NamedAdjuster } from '../adjusters/named-adjusters.ts';
import type { AdjusterKey, Setup } from '../adjusters/setup.ts';
import { chainFit } from '../chain/chain-fit.ts';
import type { Bike } from '../parts/bike.ts';
import { tyreDiameter } from '../parts/tyre.ts';
import { adjusterRange } from '../standing/adjuster-range.ts';
import type { QuantityKey } from '../units/all-quantities.ts';

export interface AdjusterStep {
  readonly from: Setup[AdjusterKey];
  readonly to: Setup[AdjusterKey];
  /** Size of the step in the metric unit of `quantity`, without a sign. */
  readonly amount: number;
  readonly quantity: QuantityKey;
  /** Which way it goes, such as "longer". */
  readonly word: string;
  /** The word names what moves, and stands before the amount, such as "tubes up". */
  readonly wordFirst?: boolean;
}

/** Difference of outside diameter that is shown for a tyre, mm: about one size of section height. */
const TYRE_STEP = 10;

/**
 * The step upward of an adjuster, or downward where its range ends. A tyre's step is 10 mm of outside diameter, that of a
 * chain the next longer one which fits, or else the next shorter one. Null where a step has nothing to start from: an axle without a chain, a
 * tyre that cannot be read, or no chain that fits.
 */
export function adjusterStep(adjuster: NamedAdjuster, bike: Bike, setup: Setup): AdjusterStep | null {
  if (adjuster.holds === 'tyre') {
    const from = setup[adjuster.key];
    const diameter = tyreDiameter(from);
    if (!diameter.ok) return null;
    const to = { diameter: diameter.value + TYRE_STEP };
    return { from, to, amount: TYRE_STEP, quantity: 'length', word: adjuster.more };
  }
  if (adjuster.holds === 'wholeNumberOrNone') {
    const from = setup[adjuster.key];
    if (from === null) return null;
    const step = bike.drive.halfLink ? 1 : 2;
    const fitting = [step, -step].find((by) => chainFit(bike, setup, from + by).ok);
    if (fitting === undefined) return null;
    const word = fitting > 0 ? 'longer' : 'shorter';
    return { from, to: from + fitting, amount: step, quantity: adjuster.quantity, word };
  }
  const from = setup[adjuster.key];
  const { most, step } = adjusterRange(adjuster, bike, setup);
  const up = from + step <= most;
  const { quantity, more, less, figure } = adjuster;
  const word = up ? more : less;
  const to = up ? from + step : from - step;
  return { from, to, amount: step, quantity, word, wordFirst: figure !== undefined };
}
