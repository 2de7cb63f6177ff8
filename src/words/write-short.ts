/** Numbers within a sentence: without the zeros after the sign that a table needs. */
import { shownSteps, writeNumber, type NumberStyle } from '../core/units/number-style.ts';
import { shownUnit, type QuantityKey } from '../core/units/all-quantities.ts';

/** A metric number in the user's unit; a whole one without decimals, such as "78 kg" or "40°"; `digits` leaves the unit out. */
export function writeShort(
  metric: number,
  quantity: QuantityKey,
  style: NumberStyle,
  part: 'text' | 'digits' = 'text',
): string {
  const { digits } = shownUnit(quantity, style.system);
  const whole = shownSteps(metric, quantity, style) % 10 ** digits === 0;
  return writeNumber(metric, quantity, style, whole ? { extraDigits: -digits } : {})[part];
}
