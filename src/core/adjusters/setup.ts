/** What the adjusters say: a value for each of the list, and what stands in for those that nobody gave. */
import { ADJUSTERS, type Adjuster, type NumberAdjuster, type Row } from './all-adjusters.ts';
import type { ValueHeld } from './adjuster.ts';

export type AdjusterKey = Adjuster['key'];
/** The adjusters whose value is a number. */
export type NumberAdjusterKey = NumberAdjuster['key'];

/** Metric numbers, angles in degrees; what each means and which way it counts stands in its adjuster's file. */
export type Setup = { readonly [Each in Row as Each['key']]: ValueHeld[Each['holds']] };

type EssentialKey = Extract<Row, { readonly default: 'essential' }>['key'];

/** A setup of which only what has no default must be given. */
export type GivenSetup = Pick<Setup, EssentialKey> & Partial<Setup>;

const DEFAULTS = Object.fromEntries(
  ADJUSTERS.flatMap(({ key, default: value }) => (value === 'essential' ? [] : [[key, value]])),
) as Omit<Setup, EssentialKey>;

/** The setup with every adjuster that is not given at its default. */
export function fillSetup(given: GivenSetup): Setup {
  return { ...DEFAULTS, ...given };
}
