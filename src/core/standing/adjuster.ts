/** What an adjuster is: one thing a mechanic can adjust, within a range and in the workshop's own steps. */
import type { Bike } from '../parts/bike.ts';
import type { NumberAdjusterKey } from '../adjusters/setup.ts';
import type { QuantityKey } from '../units/all-quantities.ts';

export type AdjusterGroup =
  'rideHeight' | 'links' | 'springs' | 'wheels' | 'steering' | 'gearing' | 'travel' | 'load' | 'riding';

export interface AdjusterRange {
  readonly least: number;
  readonly most: number;
  /** One step of the adjuster, in its metric unit. */
  readonly step: number;
}

/** An adjuster's value told a second way, as the workshop counts it. */
export interface Aside {
  readonly amount: number;
  readonly counted: 'turns' | 'links' | 'teeth';
}

export interface NumberAdjuster {
  readonly kind: 'number';
  readonly key: NumberAdjusterKey;
  /** The key it had until lately, still read for one version. */
  readonly formerly?: string;
  readonly label: string;
  readonly group: AdjusterGroup;
  readonly quantity: QuantityKey;
  readonly range: (bike: Bike) => AdjusterRange;
  /** Sentences that say what ends the range at either end; left out where it is the workshop's custom alone. */
  readonly ends?: { readonly least?: string; readonly most?: string };
  /** Whether this bike has what the adjuster turns; left out where every bike has. */
  readonly applies?: (bike: Bike) => boolean;
  readonly aside?: (value: number, bike: Bike) => Aside | null;
  /** A mechanic's words for a value above and below another. */
  readonly more: string;
  readonly less: string;
  /** What it is, which way is positive, how it is measured, and what to check. */
  readonly help: string;
}

export interface TyreAdjuster {
  readonly kind: 'tyre';
  readonly key: 'frontTyre' | 'rearTyre';
  readonly label: string;
  readonly group: AdjusterGroup;
  readonly help: string;
}

/** The chain that is on the bike, or none: then the axle stands where it is set. */
export interface ChainAdjuster {
  readonly kind: 'chain';
  readonly key: 'chainLinks';
  readonly label: string;
  readonly group: AdjusterGroup;
  readonly help: string;
}

export type Adjuster = NumberAdjuster | TyreAdjuster | ChainAdjuster;

export const ADJUSTER_GROUPS: readonly { readonly key: AdjusterGroup; readonly label: string }[] = [
  { key: 'rideHeight', label: 'Ride height' },
  { key: 'gearing', label: 'Gearing and axle' },
  { key: 'steering', label: 'Steering head' },
  { key: 'links', label: 'Rear links' },
  { key: 'springs', label: 'Springs' },
  { key: 'wheels', label: 'Tyres' },
  { key: 'travel', label: 'Travel used' },
  { key: 'load', label: 'Rider and load' },
  { key: 'riding', label: 'Riding' },
];

/** A range that is the same on every bike. */
export const fixed = (least: number, most: number, step: number) => (): AdjusterRange => ({
  least,
  most,
  step,
});

/** A length as turns of an adjuster, mm a turn; null without a thread. */
export const inTurns = (value: number, thread: number | null): Aside | null =>
  thread === null ? null : { amount: value / thread, counted: 'turns' };
