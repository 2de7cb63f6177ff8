/** What stands in a number field: the digits shown, what typed words mean, and advice when they mean nothing. */
import { fail, succeed, type Result } from '../../../core/numeric/result.ts';
import { writeNumber, type NumberStyle, type WrittenNumber } from '../../../core/units/number-style.ts';
import { parseQuantity, type ParseReason } from '../../../core/units/parse-quantity.ts';
import { QUANTITIES, shownUnit, type QuantityKey } from '../../../core/units/all-quantities.ts';

const MOST_EXTRA_DIGITS = 2;

/** A metric value as a field shows it: with the quantity's own digits, and up to two more where the value needs them. */
export function fieldNumber(value: number, quantity: QuantityKey, style: NumberStyle): WrittenNumber {
  const unit = shownUnit(quantity, style.system);
  const { indistinct } = QUANTITIES[quantity];
  let extraDigits = 0;
  while (extraDigits < MOST_EXTRA_DIGITS) {
    const written = Number((value * unit.perMetric).toFixed(unit.digits + extraDigits)) / unit.perMetric;
    if (Math.abs(written - value) <= indistinct) break;
    extraDigits += 1;
  }
  return writeNumber(value, quantity, style, { extraDigits });
}

export interface Limits {
  /** Metric; without a limit any number goes. */
  readonly least?: number;
  readonly most?: number;
  /** A number near the one that is expected, metric: what stands in the field. */
  readonly expected?: number;
  /** Sentences that say what ends the range at either end, for who types beyond it. */
  readonly ends?: { readonly least?: string; readonly most?: string };
}

export type TypedReason = ParseReason | 'thousands' | 'notWhole' | 'belowRange' | 'aboveRange';

/** The metric value meant by typed words, within the limits. Teeth, links and parts are counted whole. */
export function readTyped(
  text: string,
  quantity: QuantityKey,
  style: NumberStyle,
  limits: Limits,
): Result<number, TypedReason> {
  const parsed = parseQuantity(text, quantity, style.system);
  if (!parsed.ok) return parsed;
  const { value } = parsed;
  if (isThousands(text, value, quantity, style, limits)) return fail('thousands');
  const { counted, indistinct } = QUANTITIES[quantity];
  if (counted !== null && !Number.isInteger(value)) return fail('notWhole');
  const { least = -Infinity, most = Infinity } = limits;
  if (value >= least && value <= most) return succeed(value);
  // The limit as the message and the readings show it is rounded; typed back it must be taken, as the limit itself.
  const { digits, perMetric } = shownUnit(quantity, style.system);
  for (const limit of [least, most]) {
    const shown = Number((limit * perMetric).toFixed(digits)) / perMetric;
    if (Math.abs(value - limit) <= indistinct || Math.abs(value - shown) <= indistinct) return succeed(limit);
  }
  return fail(value < least ? 'belowRange' : 'aboveRange');
}

/** Figures above this are where a separator may part thousands. */
const THOUSANDS_ABOVE = 100;

/**
 * Whether `1,420` may mean 1420: three digits behind one separator make a number below a hundred where one above a hundred
 * is expected.
 */
function isThousands(
  text: string,
  value: number,
  quantity: QuantityKey,
  { system }: NumberStyle,
  { expected = 0 }: Limits,
): boolean {
  const { perMetric } = shownUnit(quantity, system);
  return (
    /^[+-]?[1-9]\d{0,2}[.,]\d{3}(?!\d)/.test(text.trim()) &&
    Math.abs(expected * perMetric) > THOUSANDS_ABOVE &&
    Math.abs(value * perMetric) < THOUSANDS_ABOVE
  );
}

/** One sentence of advice for words that were not taken. */
export function typedAdvice(
  reason: TypedReason,
  quantity: QuantityKey,
  style: NumberStyle,
  limits: Limits,
): string {
  const written = (value: number): string => fieldNumber(value, quantity, style).text;
  const { ends } = limits;
  switch (reason) {
    case 'empty':
      return 'Type a number, or press Escape to keep the old one.';
    case 'notANumber': {
      const example = fieldNumber(exampleOf(quantity, limits), quantity, style).digits;
      return `This is not a number; type one such as ${example}.`;
    }
    case 'wrongUnit':
      return QUANTITIES[quantity].advice;
    case 'thousands':
      return 'This could be a number of thousands or one with decimals. Type it without a sign between the thousands, or with fewer decimals.';
    case 'tooLarge':
      return 'No part of a motorcycle is that large; check the decimal sign.';
    case 'notWhole':
      return `${QUANTITIES[quantity].counted?.name ?? 'They'} are counted whole; type a whole number.`;
    case 'belowRange':
    case 'aboveRange': {
      const why = (reason === 'belowRange' ? ends?.least : ends?.most) ?? '';
      return `${rangeWords(limits, written)} ${why}`.trimEnd();
    }
  }
}

function rangeWords({ least, most }: Limits, written: (value: number) => string): string {
  if (least !== undefined && most !== undefined)
    return `This goes from ${written(least)} to ${written(most)}.`;
  return least !== undefined
    ? `This is at least ${written(least)}.`
    : `This is at most ${written(most ?? 0)}.`;
}

function exampleOf(quantity: QuantityKey, { least = 0, most = Infinity }: Limits): number {
  const usual = QUANTITIES[quantity].counted?.usual ?? 12.5;
  return Math.min(most, Math.max(least, usual));
}

/** Decimals kept after a step: takes rounding noise away, far below any adjuster's step. */
const STEP_DECIMALS = 6;

/** `steps` steps on from a metric value, held within the limits; a part of what is counted whole is one of it. */
export function stepText(
  value: number,
  steps: number,
  step: number,
  quantity: QuantityKey,
  { least = -Infinity, most = Infinity }: Limits,
): number {
  const whole = QUANTITIES[quantity].counted !== null;
  const change = whole ? Math.sign(steps) * Math.max(1, Math.round(Math.abs(steps * step))) : steps * step;
  const moved = Number((value + (steps === 0 ? 0 : change)).toFixed(STEP_DECIMALS));
  return Math.min(most, Math.max(least, moved));
}

export interface StepKey {
  readonly key: string;
  readonly shiftKey: boolean;
  readonly altKey: boolean;
  readonly ctrlKey: boolean;
  readonly metaKey: boolean;
}

/** Steps of a key: arrows one, with Shift ten, with Alt a tenth; Page keys ten. Null for any other key. */
export function stepsOfKey(event: StepKey): number | null {
  if (event.ctrlKey || event.metaKey) return null;
  const size = event.shiftKey ? 10 : event.altKey ? 0.1 : 1;
  switch (event.key) {
    case 'ArrowUp':
      return size;
    case 'ArrowDown':
      return -size;
    case 'PageUp':
      return 10;
    case 'PageDown':
      return -10;
    default:
      return null;
  }
}
