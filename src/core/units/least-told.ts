/** Whether a change is large enough for a sentence to name it. */
import { QUANTITIES, shownUnit, type QuantityKey } from './all-quantities.ts';
import type { NumberStyle } from './number-style.ts';

/** Rounding of a difference of two figures of a bike, far below any step that is written. */
const ROUNDING = 1e-9;

/** Whether a metric change is too small for a sentence to name it. */
export function isLess(metric: number, quantity: QuantityKey): boolean {
  return isBelow(metric, QUANTITIES[quantity].leastTold);
}

/** Whether a change is smaller than `least`, both in one unit. */
export function isBelow(change: number, least: number): boolean {
  return Math.abs(change) < least - ROUNDING;
}

/** A metric number in the steps that its written form shows, with its fraction. */
export function exactSteps(metric: number, quantity: QuantityKey, style: NumberStyle): number {
  const { perMetric, digits } = shownUnit(quantity, style.system);
  return metric * perMetric * 10 ** digits;
}
