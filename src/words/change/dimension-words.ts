/** A dimension between two places, in words. */
import { distance, type Point } from '../../core/plane/point.ts';
import { degrees } from '../../core/units/convert.ts';
import { writeNumber, type NumberStyle } from '../../core/units/number-style.ts';
import { directionWord, shownChange } from './shown-change.ts';

/**
 * Straight distance, then from the first place to the second: how far forward or back, how far up or down, and the slope,
 * above zero where the second place is the higher one. Such as "826.5 mm (forward 817.0 mm, down 124.6 mm, slope −8.67°)".
 */
export function dimensionWords(from: Point, to: Point, style: NumberStyle): string {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  const along = way(dx, { more: 'forward', less: 'back', same: 'level with it' }, style);
  const up = way(dy, { more: 'up', less: 'down', same: 'at the same height' }, style);
  const slope = writeNumber(degrees(Math.atan2(dy, Math.abs(dx))), 'angle', style).text;
  return `${writeNumber(distance(from, to), 'length', style).text} (${along}, ${up}, slope ${slope})`;
}

function way(
  mm: number,
  words: { readonly more: string; readonly less: string; readonly same: string },
  style: NumberStyle,
): string {
  const change = shownChange(mm, 'length', style);
  const word = directionWord(change, words);
  return change.sign === 0 ? word : `${word} ${change.amount}`;
}
