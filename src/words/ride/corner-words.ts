/** The corner's sketch in words: what the gas does to the circle, how wide the bike runs, and where the gas can open. */
import { SKETCH_BAR_DEG } from '../../core/effects/corner-radius.ts';
import { SPARE_ROAD, type CornerSketch } from '../../core/effects/corner-sketch.ts';
import { degrees } from '../../core/units/convert.ts';
import { writeNumber, type NumberStyle } from '../../core/units/number-style.ts';
import { shownChange } from '../change/shown-change.ts';

/** What the sketch is and is not. */
export function cornerTerms({ lean }: CornerSketch, style: NumberStyle): string {
  const angle = (value: number): string => writeNumber(value, 'angle', style).text;
  return `A sketch from geometry alone: the bar turned by ${angle(SKETCH_BAR_DEG)} and a lean of ${angle(degrees(lean))} all the way, and tyres that do not slip. Both lines are a sketch, and neither says anything about lap times.`;
}

/** What happens on the gas, in three sentences at most. */
export function cornerStory({ apex, exit, wide, gasAt }: CornerSketch, style: NumberStyle): string {
  const rakes = [apex, exit].map(({ rake }) => writeNumber(degrees(rake), 'angle', style).text);
  const bases = [apex, exit].map(({ wheelbase }) => writeNumber(wheelbase, 'length', style).text);
  const attitude = `On the gas the rake goes from ${rakes[0]} to ${rakes[1]} and the wheelbase from ${bases[0]} to ${bases[1]}.`;
  const { sign, amount } = shownChange(wide, 'length', style);
  if (sign === 0)
    return `${attitude} The circle stays the same, so the line is that of a bike that holds its attitude.`;
  const side = sign > 0 ? 'outside' : 'inside';
  const line = `It leaves the corner ${amount} ${side} the line of a bike that holds its attitude.`;
  const spare = writeNumber(SPARE_ROAD, 'length', style).text;
  if (gasAt === 0) return `${attitude} ${line} The gas can open at the apex.`;
  const later = writeNumber(degrees(gasAt), 'angle', style).text;
  return `${attitude} ${line} To run wide by no more than ${spare}, open the gas once ${later} of the turn past the apex are done.`;
}
