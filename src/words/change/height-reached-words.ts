/** Sentences about what a wanted height came to. */
import type { HeightPlace } from '../../core/effects/height-places.ts';
import type { HeightMet } from '../../core/effects/reach-both-heights.ts';
import type { HeightNotReached, HeightReached, HeightStep } from '../../core/effects/reach-height.ts';
import { writeNumber, type NumberStyle } from '../../core/units/number-style.ts';
import { riseWords, shownRise, signedHeight } from './height-words.ts';

const plain = (mm: number, style: NumberStyle): string => writeNumber(mm, 'length', style).text;

/** "Shock length 5.5 mm gives seat +10.3 mm. The next step, 5.0 mm, gives +9.4 mm.": what a wanted height was rounded to. */
export function reachedWords(
  { step, other }: HeightReached,
  place: HeightPlace,
  label: string,
  style: NumberStyle,
): string {
  const gives = `${label} ${plain(step.value, style)} gives ${riseWords(place, riseOf(step, style), style)}.`;
  return `${gives}${other === null ? '' : ` ${nextWords(other, style)}`}`;
}

/** "Front end −0.4 mm now, 0.0 mm before: it moved along.": what a typed height did to the other end; empty where nothing. */
export function movedAlongWords(place: HeightPlace, was: number, is: number, style: NumberStyle): string {
  return was === is
    ? ''
    : `${place.label} ${signedHeight(is, style)} now, ${signedHeight(was, style)} before: it moved along.`;
}

/** "Front end back to −5.0 mm": what brings the other end back while the typed height is kept. */
export const bringBackWords = (place: HeightPlace, to: number, style: NumberStyle): string =>
  `${place.label} back to ${signedHeight(to, style)}`;

/** "Seat +10.0 mm with shock length 5.5 mm. Front end −4.9 mm with fork tubes above clamp 9.0 mm, the step nearest to −5.0 mm.": both ends at once. */
export function bothReachedWords(
  met: readonly HeightMet[],
  labelOf: (place: HeightPlace) => string,
  style: NumberStyle,
): string {
  return met
    .map(({ place, value, wanted, before, after }) => {
      const rise = signedHeight(shownRise(before, after, style), style);
      const asked = signedHeight(wanted, style);
      const nearest = asked === rise ? '' : `, the step nearest to ${asked}`;
      return `${place.label} ${rise} with ${small(labelOf(place))} ${plain(value, style)}${nearest}.`;
    })
    .join(' ');
}

const small = (label: string): string => label.charAt(0).toLowerCase() + label.slice(1);

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
      return `The most it can do is ${riseWords(place, refusal.limit ?? 0, style)}: the range of ${small(label)} ends there.`;
    case 'noHeight':
      return 'The bike does not stand in this ride state, so it has no height in it.';
    case 'inputNotANumber':
      return 'This is not a number.';
  }
}
