/** Sentences about what a wanted height came to. */
import type { HeightPlace } from '../core/effects/height-places.ts';
import type { HeightNotReached, HeightReached, HeightStep } from '../core/effects/reach-height.ts';
import { writeNumber, type NumberStyle } from '../core/units/number-style.ts';
import { capital, riseWords, shownRise, signedHeight } from './height-words.ts';

const plain = (mm: number, style: NumberStyle): string => writeNumber(mm, 'length', style).text;

/** "Shock length 5.5 mm gives seat +10.3 mm. Front end −0.4 mm, measured above the axle. The next step, 5.0 mm, gives +9.4 mm.": what a wanted height was rounded to. */
export function reachedWords(
  { step, other }: HeightReached,
  place: HeightPlace,
  label: string,
  style: NumberStyle,
): string {
  const gives = `${label} ${plain(step.value, style)} gives ${riseWords(place, riseOf(step, style), style)}.`;
  const { otherEnd } = step;
  const rise = shownRise(otherEnd.before, otherEnd.after, style);
  const beside = rise === 0 ? '' : ` ${capital(riseWords(otherEnd.place, rise, style))}.`;
  return `${gives}${beside}${other === null ? '' : ` ${nextWords(other, style)}`}`;
}

const riseOf = ({ before, after }: HeightStep, style: NumberStyle): number => shownRise(before, after, style);

function nextWords(step: HeightStep, style: NumberStyle): string {
  return `The next step, ${plain(step.value, style)}, gives ${signedHeight(riseOf(step, style), style)}.`;
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
