/** Pressures as a gauge shows them: bar, or pounds-force a square inch. */
import { MM_PER_INCH, NEWTON_A_SQUARE_MM_PER_BAR, NEWTON_PER_POUND_FORCE } from './convert.ts';
import { asInCore, type Quantity, unit } from './quantity.ts';

/** Bar in a pound-force a square inch. */
const POUND_A_SQUARE_INCH = NEWTON_PER_POUND_FORCE / MM_PER_INCH ** 2 / NEWTON_A_SQUARE_MM_PER_BAR;

export const pressure: Quantity = {
  fileUnit: 'bar',
  metric: unit('bar', 1, 2),
  inch: unit('psi', POUND_A_SQUARE_INCH, 1),
  fromCore: asInCore,
  typed: { bar: 1, kpa: 0.01, mpa: 10, psi: POUND_A_SQUARE_INCH },
  advice: 'Use bar, kPa or psi here.',
  // A gauge for suspension shows hundredths of a bar.
  indistinct: 0.01,
  noticed: 0.2,
  leastTold: 0,
  counted: null,
};
