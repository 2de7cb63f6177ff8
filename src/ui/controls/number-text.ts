/** What stands in a number field: the digits shown, what typed words mean, and advice when they mean nothing. */
import { refused, solved, type Result } from '../../core/numeric/result.ts';
import { writeNumber, type NumberStyle, type WrittenNumber } from '../../core/units/number-style.ts';
import { parseQuantity, type ParseReason } from '../../core/units/parse-quantity.ts';
import { shownUnit, type QuantityKey } from '../../core/units/quantity.ts';

/** Below this difference, in the metric unit, nobody in a workshop can tell two numbers apart. */
const INDISTINCT: Readonly<Record<QuantityKey, number>> = {
  // Half a thousandth of an inch.
  length: 0.0127,
  angle: 0.005,
  mass: 0.05,
  acceleration: 0.005,
  ratio: 0.0005,
  percent: 0.05,
  teeth: 0.5,
  links: 0.5,
  count: 0.5,
  force: 0.5,
  rate: 0.02,
  speed: 0.05,
};

const MOST_EXTRA_DIGITS = 2;

/** Quantities that are counted, not measured: what is counted, and a usual number of it. */
const WHOLE: ReadonlyMap<QuantityKey, { readonly name: string; readonly usual: number }> = new Map([
  ['teeth', { name: 'Teeth', usual: 16 }],
  ['links', { name: 'Links', usual: 110 }],
  ['count', { name: 'Parts', usual: 2 }],
]);

/** A metric value as a field shows it: with the quantity's own digits, and up to two more where the value needs them. */
export function fieldNumber(value: number, quantity: QuantityKey, style: NumberStyle): WrittenNumber {
  const unit = shownUnit(quantity, style.system);
  let extraDigits = 0;
  while (extraDigits < MOST_EXTRA_DIGITS) {
    const written = Number((value * unit.perMetric).toFixed(unit.digits + extraDigits)) / unit.perMetric;
    if (Math.abs(written - value) <= INDISTINCT[quantity]) break;
    extraDigits += 1;
  }
  return writeNumber(value, quantity, style, { extraDigits });
}

export interface Limits {
  /** Metric; without a limit any number goes. */
  readonly least?: number;
  readonly most?: number;
  /** Sentences that say what ends the range at either end, for who types beyond it. */
  readonly ends?: { readonly least?: string; readonly most?: string };
}

export type TypedReason = ParseReason | 'notWhole' | 'belowRange' | 'aboveRange';

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
  if (WHOLE.has(quantity) && !Number.isInteger(value)) return refused('notWhole');
  const { least = -Infinity, most = Infinity } = limits;
  if (value >= least && value <= most) return solved(value);
  // The limit as the message shows it is rounded; typed back it must be taken, as the limit itself.
  if (Math.abs(value - least) <= INDISTINCT[quantity]) return solved(least);
  if (Math.abs(value - most) <= INDISTINCT[quantity]) return solved(most);
  return refused(value < least ? 'belowRange' : 'aboveRange');
}

const UNIT_ADVICE: Readonly<Record<QuantityKey, string>> = {
  length: 'Use mm, cm or in here.',
  angle: 'Use degrees here.',
  mass: 'Use kg or lb here.',
  acceleration: 'Use g here, as in 0.9 g.',
  ratio: 'Leave the unit out here.',
  percent: 'Use % here.',
  teeth: 'Count teeth here.',
  links: 'Count links here.',
  count: 'Count parts here.',
  force: 'Use N or lbf here.',
  rate: 'Use N/mm, kg/mm or lb/in here.',
  speed: 'Use km/h or mph here.',
};

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
      return UNIT_ADVICE[quantity];
    case 'tooLarge':
      return 'No part of a motorcycle is that large; check the decimal sign.';
    case 'notWhole':
      return `${WHOLE.get(quantity)?.name ?? 'They'} are counted whole; type a whole number.`;
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
  const usual = WHOLE.get(quantity)?.usual ?? 12.5;
  return Math.min(most, Math.max(least, usual));
}

/** Decimals kept after a step: takes rounding noise away, far below any adjuster's step. */
const STEP_DECIMALS = 6;

/** `steps` steps on from a metric value, held within the limits; a part of what is counted whole is one of it. */
export function stepped(
  value: number,
  steps: number,
  step: number,
  quantity: QuantityKey,
  { least = -Infinity, most = Infinity }: Limits,
): number {
  const whole = WHOLE.has(quantity);
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

/** Steps a key asks for: arrows one, with Shift ten, with Alt a tenth; Page keys ten. Null for any other key. */
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
