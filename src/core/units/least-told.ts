/** The least change that a sentence names, and what it says below that. */
import { shownUnit, type QuantityKey } from './all-quantities.ts';
import type { NumberStyle } from './number-style.ts';

/** Changes below these no gauge of a workshop shows and no rider feels, in the metric unit. Common practice, no source. */
export const LEAST_TOLD = {
  angle: 0.1,
  length: 1,
  percent: 1,
  ratio: 0.02,
  acceleration: 0.02,
  force: 10,
  rate: 0.5,
} as const;

export type ToldQuantity = keyof typeof LEAST_TOLD;

/** Rounding of a difference of two figures of a bike, far below any step that is written. */
const ROUNDING = 1e-9;

/** Whether a metric change is too small to be told. */
export function isLess(metric: number, quantity: ToldQuantity): boolean {
  return isBelow(metric, LEAST_TOLD[quantity]);
}

/** The same of a quantity that may have no such bound: every change of it is named. */
export function isTooSmall(metric: number, quantity: QuantityKey): boolean {
  return quantity in LEAST_TOLD && isLess(metric, quantity as ToldQuantity);
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
