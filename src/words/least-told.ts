/** The least change that a sentence names, and what it says below that. */
import { shownUnit, type QuantityKey } from '../core/units/all-quantities.ts';
import type { NumberStyle } from '../core/units/number-style.ts';

/** Changes below these no gauge of a workshop shows and no rider feels, in the metric unit. */
export const LEAST_TOLD = { angle: 0.1, length: 1, percent: 1, ratio: 0.02 } as const;

/** The change of trail that a rider notices, mm. Common practice, no source. */
export const TRAIL_NOTICED = 2;

export type ToldQuantity = keyof typeof LEAST_TOLD;

/** Rounding of a difference of two figures of a bike, far below any step that is written. */
const ROUNDING = 1e-9;

/** Whether a metric change is too small to be told. */
export function isLess(metric: number, quantity: ToldQuantity): boolean {
  return Math.abs(metric) < LEAST_TOLD[quantity] - ROUNDING;
}

/** A metric number in the steps that its written form shows, with its fraction. */
export function exactSteps(metric: number, quantity: QuantityKey, style: NumberStyle): number {
  const { perMetric, digits } = shownUnit(quantity, style.system);
  return metric * perMetric * 10 ** digits;
}
