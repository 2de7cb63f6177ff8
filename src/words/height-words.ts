/** Sentences about the height of an end of the bike: what an adjuster does to it, and what a wanted height came to. */
import type { HeightEffect } from '../core/effects/adjuster-effect.ts';
import type { HeightPlace } from '../core/effects/height-places.ts';
import type { HeightNotReached, HeightReached, HeightStep } from '../core/effects/reach-height.ts';
import type { QuantityKey } from '../core/units/all-quantities.ts';
import { metricOfSteps, shownSteps, writeNumber, type NumberStyle } from '../core/units/number-style.ts';
import { writeShort } from './write-short.ts';

const signed = (mm: number, style: NumberStyle): string =>
  writeNumber(mm, 'length', style, { signed: true }).text;

const plain = (mm: number, style: NumberStyle): string => writeNumber(mm, 'length', style).text;

/** The rise between two heights as they are written, mm, so that a person who subtracts the readings finds it. */
export function shownRise(before: number, after: number, style: NumberStyle): number {
  const steps = shownSteps(after, 'length', style) - shownSteps(before, 'length', style);
  return metricOfSteps(steps, 'length', style);
}

function riseWords({ words: [name, where] }: HeightPlace, mm: number, style: NumberStyle): string {
  return [name, signed(mm, style), where].filter(Boolean).join(' ');
}

/** "Front −4.9 mm at the axle line": what an adjuster does since the baseline. */
export function effectWords({ place, before, after }: HeightEffect, style: NumberStyle): string {
  const told = riseWords(place, shownRise(before, after, style), style);
  return told.charAt(0).toUpperCase() + told.slice(1);
}

/** "0.5 mm longer: seat +0.9 mm": what one step of an adjuster would do. */
export function stepEffectWords(
  step: { readonly amount: number; readonly quantity: QuantityKey; readonly more: string },
  { place, before, after }: HeightEffect,
  style: NumberStyle,
): string {
  const rise = shownRise(before, after, style);
  return `${writeShort(step.amount, step.quantity, style)} ${step.more}: ${riseWords(place, rise, style)}`;
}

/** "Shock length 5.5 mm gives seat +10.3 mm. The next step, 5.0 mm, gives +9.4 mm.": what a wanted height was rounded to. */
export function reachedWords(
  { step, other }: HeightReached,
  place: HeightPlace,
  label: string,
  style: NumberStyle,
): string {
  const gives = `${label} ${plain(step.value, style)} gives ${riseWords(place, step.rise, style)}.`;
  return other === null ? gives : `${gives} ${nextWords(other, style)}`;
}

function nextWords({ value, rise }: HeightStep, style: NumberStyle): string {
  return `The next step, ${plain(value, style)}, gives ${signed(rise, style)}.`;
}

/** Why a wanted height cannot be had, and the furthest that can. */
export function notReachedWords(
  refusal: HeightNotReached,
  place: HeightPlace,
  label: string,
  style: NumberStyle,
): string {
  switch (refusal.reason) {
    case 'heightOutOfReach':
      return `The most it can do is ${riseWords(place, refusal.limit ?? 0, style)}: ${label} ends there.`;
    case 'noHeight':
      return 'The bike does not stand in this ride state, so it has no height in it.';
    case 'inputNotANumber':
      return 'This is not a number.';
  }
}
