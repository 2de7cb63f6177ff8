/** Small volumes: ml, or cubic inches. */
import { MM_PER_INCH } from './convert.ts';
import { asInCore, type Quantity, unit } from './quantity.ts';

/** Millilitres in a cubic inch, exact. */
const CUBIC_INCH = MM_PER_INCH ** 3 / 1000;

export const volume: Quantity = {
  fileUnit: 'ml',
  metric: unit('ml', 1, 0),
  inch: unit('in³', CUBIC_INCH, 2),
  fromCore: asInCore,
  typed: { ml: 1, cc: 1, 'cm³': 1, l: 1000, 'in³': CUBIC_INCH },
  advice: 'Use ml or in³ here.',
  indistinct: 0.5,
  noticed: 10,
  leastTold: 0,
  counted: null,
};
