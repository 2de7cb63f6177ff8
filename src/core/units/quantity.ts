/** The table of quantities: what each is counted in, for people who use metric and people who use inches. */
import { degrees, KG_PER_POUND, KM_PER_MILE, MM_PER_INCH, NEWTON_PER_POUND_FORCE } from './convert.ts';

export type QuantityKey =
  | 'length'
  | 'angle'
  | 'mass'
  | 'acceleration'
  | 'ratio'
  | 'percent'
  | 'teeth'
  | 'links'
  | 'count'
  | 'force'
  | 'rate'
  | 'speed';

export type UnitSystem = 'metric' | 'inch';

/** How one system writes a quantity. `perMetric` times the metric number gives the number shown. */
export interface ShownUnit {
  readonly symbol: string;
  readonly perMetric: number;
  /** Digits after the decimal sign that a careful workshop measurement supports. */
  readonly digits: number;
}

export interface Quantity {
  /** Unit of the metric number in files and JSON output; "1" for a plain number. */
  readonly fileUnit: string;
  readonly metric: ShownUnit;
  readonly inch: ShownUnit;
  /** From the core's unit (mm, rad, kg, g) to the metric number. */
  readonly fromCore: (core: number) => number;
}

const same = (core: number): number => core;

function alike(fileUnit: string, symbol: string, digits: number, fromCore = same): Quantity {
  const unit = { symbol, perMetric: 1, digits };
  return { fileUnit, metric: unit, inch: unit, fromCore };
}

export const QUANTITIES: Readonly<Record<QuantityKey, Quantity>> = {
  length: {
    fileUnit: 'mm',
    metric: { symbol: 'mm', perMetric: 1, digits: 1 },
    inch: { symbol: 'in', perMetric: 1 / MM_PER_INCH, digits: 2 },
    fromCore: same,
  },
  angle: alike('deg', '°', 2, degrees),
  mass: {
    fileUnit: 'kg',
    metric: { symbol: 'kg', perMetric: 1, digits: 1 },
    inch: { symbol: 'lb', perMetric: 1 / KG_PER_POUND, digits: 1 },
    fromCore: same,
  },
  acceleration: alike('g', 'g', 2),
  ratio: alike('1', '', 3),
  percent: alike('%', '%', 1),
  teeth: alike('1', 'teeth', 0),
  links: alike('1', 'links', 0),
  count: alike('1', '', 0),
  force: {
    fileUnit: 'N',
    metric: { symbol: 'N', perMetric: 1, digits: 0 },
    inch: { symbol: 'lbf', perMetric: 1 / NEWTON_PER_POUND_FORCE, digits: 1 },
    fromCore: same,
  },
  rate: {
    fileUnit: 'N/mm',
    metric: { symbol: 'N/mm', perMetric: 1, digits: 1 },
    inch: { symbol: 'lbf/in', perMetric: MM_PER_INCH / NEWTON_PER_POUND_FORCE, digits: 1 },
    fromCore: same,
  },
  speed: {
    fileUnit: 'km/h',
    metric: { symbol: 'km/h', perMetric: 1, digits: 1 },
    inch: { symbol: 'mph', perMetric: 1 / KM_PER_MILE, digits: 1 },
    fromCore: same,
  },
};

/** The unit in which a system shows a quantity. */
export function shownUnit(quantity: QuantityKey, system: UnitSystem): ShownUnit {
  const entry = QUANTITIES[quantity];
  return system === 'inch' ? entry.inch : entry.metric;
}
