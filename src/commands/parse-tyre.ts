/** Reads what a person types for a tyre: a size code, a diameter or a circumference. */
import { fail, succeed, type Result } from '../core/numeric/result.ts';
import { parseQuantity, type ParseReason } from '../core/units/parse-quantity.ts';
import type { UnitSystem } from '../core/units/quantity.ts';
import { readTyreCode, tyreDiameter, type Tyre, type TyreReason } from '../core/parts/tyre.ts';

/**
 * The tyre meant by `text`: a size code such as `190/55-17`, or a length measured, in the user's own unit unless it
 * names one: `diameter=640`, `circumference=2010 mm`, or a bare number, which is a diameter. Refused when it is none
 * of these, or a size that no wheel has.
 */
export function parseTyre(text: string, system: UnitSystem): Result<Tyre, ParseReason | TyreReason> {
  const tyre = tyreMeant(text, system);
  if (!tyre.ok) return tyre;
  const diameter = tyreDiameter(tyre.value);
  return diameter.ok ? tyre : diameter;
}

function tyreMeant(text: string, system: UnitSystem): Result<Tyre, ParseReason | TyreReason> {
  if (typeof readTyreCode(text) === 'object') return succeed({ code: text.trim() });
  const [, word = 'diameter', amount = ''] = /^\s*(?:(diameter|circumference)\s*=)?(.*)$/is.exec(text) ?? [];
  const parsed = parseQuantity(amount, 'length', system);
  if (!parsed.ok) return fail(parsed.reason === 'notANumber' ? 'tyreCodeUnreadable' : parsed.reason);
  const length = parsed.value;
  return succeed(word.toLowerCase() === 'diameter' ? { diameter: length } : { circumference: length });
}
