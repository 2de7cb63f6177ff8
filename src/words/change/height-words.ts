/** Sentences about what an adjuster does to the height of an end or to a reading. */
import type { HeightEffect, ReadingEffect } from '../../core/effects/adjuster-effect.ts';
import type { AdjusterStep } from '../../core/effects/adjuster-step.ts';
import { heightPlace, type HeightPlace } from '../../core/effects/height-places.ts';
import { QUANTITIES, type QuantityKey } from '../../core/units/all-quantities.ts';
import {
  shownDifference,
  writeChange,
  writeNumber,
  type NumberStyle,
} from '../../core/units/number-style.ts';
import { writeShort } from '../write-short.ts';

type Effect = HeightEffect | ReadingEffect;

/** "+4.9 mm". */
export const signedHeight = (mm: number, style: NumberStyle): string =>
  writeNumber(mm, 'length', style, { signed: true }).text;

/** The rise between two heights as they are written, mm, so that a person who subtracts the readings finds it. */
export function shownRise(before: number, after: number, style: NumberStyle): number {
  return shownDifference(before, after, 'length', style);
}

/** "front end −4.9 mm, straight above the axle". */
export function riseWords({ words: [name, where] }: HeightPlace, mm: number, style: NumberStyle): string {
  return `${name} ${signedHeight(mm, style)}${where === '' ? '' : `, ${where}`}`;
}

/** "front end, straight above the axle,": a place and where its height is measured, in the middle of a sentence. */
export const placeWords = ({ words: [name, where] }: HeightPlace): string =>
  where === '' ? name : `${name}, ${where},`;

/** "Since the baseline, measured straight above the axle.": what a change of height that is typed is counted from. */
export const sinceWords = ({ words: [, where] }: HeightPlace): string =>
  `Since the baseline${where === '' ? '' : `, measured ${where}`}.`;

function changeWords(effect: Effect, style: NumberStyle): string {
  const { before, after } = effect;
  if ('place' in effect) return riseWords(effect.place, shownRise(before, after, style), style);
  const { key, label, quantity } = effect.reading;
  if (key === 'seatHeight') return riseWords(heightPlace('seat'), shownRise(before, after, style), style);
  const { text } = writeChange(shownDifference(before, after, quantity, style), quantity, style);
  return `${label.charAt(0).toLowerCase()}${label.slice(1)} ${text}`;
}

/**
 * "Front end −4.9 mm, straight above the axle", "Trail −1.2 mm": what an adjuster does since the baseline; with `othersTurned` it says that
 * it alone did this, and with `all` what all did to the same height where that is another figure: "This alone: front end −4.9 mm, in all −5.3 mm, …".
 */
export function effectWords(
  effect: Effect,
  style: NumberStyle,
  othersTurned = false,
  all: HeightEffect | null = null,
): string {
  if (!othersTurned) return capital(changeWords(effect, style));
  if (all === null || !('place' in effect)) return `This alone: ${changeWords(effect, style)}`;
  const [one, every] = [effect, all].map(({ before, after }) => shownRise(before, after, style));
  // What the others left as it was is not said twice.
  if (one === every) return capital(changeWords(effect, style));
  const {
    words: [name, where],
  } = effect.place;
  const told = `This alone: ${name} ${signedHeight(one, style)}, in all ${signedHeight(every, style)}`;
  return where === '' ? told : `${told}, ${where}`;
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

/** What one step does to a height, with a digit more than readings have: five steps of −0.96 mm are −4.8, and not −5.0. */
function risePerStep({ place, before, after }: HeightEffect, style: NumberStyle): string {
  const {
    words: [name, where],
  } = place;
  const { text } = writeNumber(after - before, 'length', style, { signed: true, extraDigits: 1 });
  return `${name} ${text}${where === '' ? '' : `, ${where}`}`;
}

/** "0.5 mm longer: seat +0.93 mm", "Tubes up 1 mm: front end −0.96 mm, …": what one step of an adjuster would do. */
export function stepEffectWords(
  step: Pick<AdjusterStep, 'amount' | 'quantity' | 'word' | 'wordFirst'>,
  effect: Effect,
  style: NumberStyle,
): string {
  const { amount, quantity, word, wordFirst } = step;
  const size = stepWords(amount, quantity, style);
  const turned = wordFirst ? `${capital(word)} ${size}` : `${size} ${word}`;
  return `${turned}: ${'place' in effect ? risePerStep(effect, style) : changeWords(effect, style)}`;
}
