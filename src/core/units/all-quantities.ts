/** Every quantity that a figure can be of. */
import { acceleration } from './acceleration.ts';
import { angle } from './angle.ts';
import { circle } from './circle.ts';
import { count } from './count.ts';
import { force } from './force.ts';
import { length } from './length.ts';
import { links } from './links.ts';
import { mass } from './mass.ts';
import { percent } from './percent.ts';
import { pressure } from './pressure.ts';
import { rate } from './rate.ts';
import { ratio } from './ratio.ts';
import { speed } from './speed.ts';
import { teeth } from './teeth.ts';
import { volume } from './volume.ts';
import type { Quantity, ShownUnit, UnitSystem } from './quantity.ts';

const quantities = {
  length,
  angle,
  mass,
  acceleration,
  ratio,
  percent,
  teeth,
  links,
  count,
  force,
  rate,
  speed,
  pressure,
  volume,
  circle,
} satisfies Readonly<Record<string, Quantity>>;

export type QuantityKey = keyof typeof quantities;

export const QUANTITIES: Readonly<Record<QuantityKey, Quantity>> = quantities;

/** The unit in which a system shows a quantity. */
export function shownUnit(quantity: QuantityKey, system: UnitSystem): ShownUnit {
  return QUANTITIES[quantity][system];
}

/** The unit as the schema and the command line name it: what is counted by its own word, all else as in files. */
export function unitWord(quantity: QuantityKey): string {
  const { counted, metric, fileUnit } = QUANTITIES[quantity];
  return counted === null || metric.symbol === '' ? fileUnit : metric.symbol;
}
