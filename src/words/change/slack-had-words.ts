/** The slack of a chain that nobody set, in words. */
import { writeNumber, type NumberStyle } from '../../core/units/number-style.ts';

/** "23.5 mm, wheel hanging": what a chain that nobody set has. */
export const slackHadWords = (mm: number, style: NumberStyle): string =>
  `${writeNumber(mm, 'length', style).text}, wheel hanging`;
