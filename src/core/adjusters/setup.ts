/** A setup: where every adjuster stands. */
import type { Adjuster, NumberAdjuster, Row } from './all-adjusters.ts';
import type { ValueHeld } from './definition/adjuster.ts';

export type AdjusterKey = Adjuster['key'];
/** The adjusters whose value is a number. */
export type NumberAdjusterKey = NumberAdjuster['key'];

/** Metric numbers, angles in degrees; what each means and which way it counts stands in its adjuster's file. */
export type Setup = { readonly [Each in Row as Each['key']]: ValueHeld[Each['holds']] };
