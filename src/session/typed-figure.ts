/** What was typed for a measurement: its figure and its unit apart, so that it means the same in either unit system. */
import { parseQuantity } from '../core/units/parse-quantity.ts';
import { QUANTITIES, shownUnit, type QuantityKey } from '../core/units/all-quantities.ts';
import type { NumberStyle } from '../core/units/number-style.ts';
import type { KeptRow } from '../document/measure.ts';

type Figure = Pick<KeptRow, 'figure' | 'unit'>;

/** Digits, signs and fractions; what is left is the unit. */
const FIGURE = /^[-+−–\d.,/\s]*/;

/** Words as a person typed them; where they name no unit, it is the one that stood beside the field. */
export function typedFigure(words: string, quantity: QuantityKey, { system }: NumberStyle): Figure {
  const figure = (FIGURE.exec(words)?.[0] ?? '').trim();
  const unit = words.trim().slice(figure.length).trim();
  const { symbol } = shownUnit(quantity, system);
  const beside = Object.hasOwn(QUANTITIES[quantity].typed, symbol) ? symbol : '';
  return { figure, unit: unit === '' ? beside : unit };
}

/** The metric number of a typed figure; null where it is no number. */
export function figureValue({ figure, unit }: Figure, quantity: QuantityKey): number | null {
  const read = parseQuantity(`${figure} ${unit}`, quantity, 'metric');
  return read.ok ? read.value : null;
}
