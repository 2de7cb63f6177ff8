/** Writing numbers for people: decimal sign, true minus, signs on differences, digits of the quantity. */
import { QUANTITIES, shownUnit, type QuantityKey } from './all-quantities.ts';
import type { UnitSystem } from './quantity.ts';

/** How this user reads numbers. */
export interface NumberStyle {
  readonly system: UnitSystem;
  readonly decimal: '.' | ',';
}

/** A number ready to be read: digits, its unit, and both together. */
export interface WrittenNumber {
  readonly digits: string;
  readonly unit: string;
  readonly text: string;
}

const MINUS = '\u2212';

/**
 * Writes a metric number (mm, degrees, kg, g, %) in the user's unit. `signed` puts a plus before what is above
 * zero, for differences; a difference that rounds to nothing is written without a sign.
 */
export function writeNumber(
  metric: number,
  quantity: QuantityKey,
  style: NumberStyle,
  options: { readonly signed?: boolean; readonly extraDigits?: number } = {},
): WrittenNumber {
  const unit = shownUnit(quantity, style.system);
  const fixed = (metric * unit.perMetric).toFixed(unit.digits + (options.extraDigits ?? 0));
  const isZero = Number(fixed) === 0;
  const sign = isZero ? '' : fixed.startsWith('-') ? MINUS : options.signed ? '+' : '';
  const digits = sign + fixed.replace('-', '').replace('.', style.decimal);
  const gap = unit.symbol === '' || unit.symbol === '°' ? '' : '\u00a0';
  return { digits, unit: unit.symbol, text: digits + gap + unit.symbol };
}

/** Whether a difference would be written as zero, that is, is below what the quantity's digits can show. */
export function roundsToNothing(metric: number, quantity: QuantityKey, style: NumberStyle): boolean {
  const unit = shownUnit(quantity, style.system);
  return Number((metric * unit.perMetric).toFixed(unit.digits)) === 0;
}

/** A metric number counted in the smallest steps that its written form shows, so that written numbers add up. */
export function shownSteps(metric: number, quantity: QuantityKey, style: NumberStyle): number {
  const unit = shownUnit(quantity, style.system);
  return Math.round(metric * unit.perMetric * 10 ** unit.digits);
}

/** The metric number that is written as so many smallest steps. */
export function metricOfSteps(steps: number, quantity: QuantityKey, style: NumberStyle): number {
  const unit = shownUnit(quantity, style.system);
  return steps / 10 ** unit.digits / unit.perMetric;
}

/**
 * The change between two metric numbers as they are written, so that a person who subtracts them finds it; metric. Zero
 * where both are written alike.
 */
export function shownDifference(
  before: number,
  after: number,
  quantity: QuantityKey,
  style: NumberStyle,
): number {
  const steps = shownSteps(after, quantity, style) - shownSteps(before, quantity, style);
  return metricOfSteps(steps, quantity, style);
}

/**
 * Writes a change with its sign, metric in and in the user's unit out. A change of a percentage is in points, since a
 * percentage of a percentage would be another number; of what is counted a single one has its own word.
 */
export function writeChange(metric: number, quantity: QuantityKey, style: NumberStyle): WrittenNumber {
  const written = writeNumber(metric, quantity, style, { signed: true });
  const { counted, changeUnit } = QUANTITIES[quantity];
  const one = Math.abs(shownSteps(metric, quantity, style)) === 1;
  const word = one ? (changeUnit?.one ?? counted?.one) : changeUnit?.many;
  if (word === undefined) return written;
  return { ...written, unit: word, text: `${written.digits}\u00a0${word}` };
}
