/** What a quantity is: its unit in files, in both systems and in what people type. */

export type UnitSystem = 'metric' | 'inch';

/** How one system writes a quantity. */
export interface ShownUnit {
  readonly symbol: string;
  /** The metric number of one of this unit, exact. */
  readonly inMetric: number;
  /** `perMetric` times the metric number gives the number shown. */
  readonly perMetric: number;
  /** Digits after the decimal sign that a careful workshop measurement supports. */
  readonly digits: number;
}

/** What is counted, not measured: teeth, links, parts. */
export interface Counted {
  /** The plural, as it begins a sentence. */
  readonly name: string;
  /** The symbol that stands beside a single one. */
  readonly one: string;
  /** A usual number of them. */
  readonly usual: number;
}

export interface Quantity {
  /** Unit of the metric number in files and JSON output; "1" for a plain number. */
  readonly fileUnit: string;
  readonly metric: ShownUnit;
  readonly inch: ShownUnit;
  /** From the core's unit (mm, rad, kg, g) to the metric number. */
  readonly fromCore: (core: number) => number;
  /** Unit words that a field understands, in small letters, with the metric number of one of them. */
  readonly typed: Readonly<Record<string, number>>;
  /** One sentence for whoever types another unit. */
  readonly advice: string;
  /** Below this difference, in the metric unit, nobody in a workshop can tell two numbers apart. */
  readonly indistinct: number;
  /** The change that a rider notices, in the metric unit; changes of different quantities are compared in it. */
  readonly noticed: number;
  /**
   * A sentence says nothing of a smaller change, in the metric unit: no gauge of a workshop shows it and no rider feels it.
   * 0 where every change is named. Common practice, no source.
   */
  readonly leastTold: number;
  /** Null for what is measured. */
  readonly counted: Counted | null;
  /** What a change of it is written in, one and many; left out where its unit does. */
  readonly changeUnit?: { readonly one: string; readonly many: string };
}

/** A unit, by the metric number of one of it. */
export function unit(symbol: string, inMetric: number, digits: number): ShownUnit {
  return { symbol, inMetric, perMetric: 1 / inMetric, digits };
}

/** The same unit in both systems. */
export function inBothSystems(symbol: string, digits: number): Pick<Quantity, 'metric' | 'inch'> {
  const both = unit(symbol, 1, digits);
  return { metric: both, inch: both };
}

/** The core counts in the metric unit. */
export function asInCore(core: number): number {
  return core;
}
