/** Sentences about what an adjuster does to the height of an end or to a reading. */
import type { HeightEffect, ReadingEffect } from '../core/effects/adjuster-effect.ts';
import { heightPlace, type HeightPlace } from '../core/effects/height-places.ts';
import { QUANTITIES, type QuantityKey } from '../core/units/all-quantities.ts';
import { shownDifference, writeChange, writeNumber, type NumberStyle } from '../core/units/number-style.ts';
import { writeShort } from './write-short.ts';

type Effect = HeightEffect | ReadingEffect;

/** "+4.9 mm". */
export const signedHeight = (mm: number, style: NumberStyle): string =>
  writeNumber(mm, 'length', style, { signed: true }).text;

/** The rise between two heights as they are written, mm, so that a person who subtracts the readings finds it. */
export function shownRise(before: number, after: number, style: NumberStyle): number {
  return shownDifference(before, after, 'length', style);
}

/** "front −4.9 mm at the axle line". */
export function riseWords({ words: [name, where] }: HeightPlace, mm: number, style: NumberStyle): string {
  return [name, signedHeight(mm, style), where].filter(Boolean).join(' ');
}

function changeWords(effect: Effect, style: NumberStyle): string {
  const { before, after } = effect;
  if ('place' in effect) return riseWords(effect.place, shownRise(before, after, style), style);
  const { key, label, quantity } = effect.reading;
  if (key === 'seatHeight') return riseWords(heightPlace('seat'), shownRise(before, after, style), style);
  const { text } = writeChange(shownDifference(before, after, quantity, style), quantity, style);
  return `${label.charAt(0).toLowerCase()}${label.slice(1)} ${text}`;
}

/**
 * "Front −4.9 mm at the axle line", "Trail −1.2 mm": what an adjuster does since the baseline; with `othersTurned` it says that
 * the others stay as they are.
 */
export function effectWords(effect: Effect, style: NumberStyle, othersTurned = false): string {
  const told = changeWords(effect, style);
  if (othersTurned) return `With the others as set: ${told}`;
  return capital(told);
}

/** With a capital at its start. */
export const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);

/** "0.5 mm", "1 tooth", "5 points": one step of an adjuster. */
function stepWords(amount: number, quantity: QuantityKey, style: NumberStyle): string {
  const { changeUnit, counted } = QUANTITIES[quantity];
  const word = amount === 1 ? (changeUnit?.one ?? counted?.one) : changeUnit?.many;
  return word === undefined
    ? writeShort(amount, quantity, style)
    : `${writeShort(amount, quantity, style, 'digits')}\u00a0${word}`;
}

/** "0.5 mm longer: seat +0.9 mm", "1 tooth bigger: anti-squat −1.3 points": what one step of an adjuster would do. */
export function stepEffectWords(
  step: { readonly amount: number; readonly quantity: QuantityKey; readonly more: string },
  effect: Effect,
  style: NumberStyle,
): string {
  return `${stepWords(step.amount, step.quantity, style)} ${step.more}: ${changeWords(effect, style)}`;
}
