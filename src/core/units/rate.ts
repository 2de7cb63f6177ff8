/** Rates of springs: N/mm, or pounds-force an inch. */
import { MM_PER_INCH, NEWTON_PER_POUND_FORCE, STANDARD_GRAVITY } from './convert.ts';
import { asInCore, type Quantity, unit } from './quantity.ts';

/** N/mm in a pound-force an inch, exact. */
const POUND_AN_INCH = NEWTON_PER_POUND_FORCE / MM_PER_INCH;

export const rate: Quantity = {
  fileUnit: 'N/mm',
  metric: unit('N/mm', 1, 1),
  inch: unit('lbf/in', POUND_AN_INCH, 1),
  fromCore: asInCore,
  typed: {
    'n/mm': 1,
    'n/cm': 0.1,
    'kg/mm': STANDARD_GRAVITY,
    'kgf/mm': STANDARD_GRAVITY,
    'lb/in': POUND_AN_INCH,
    'lbf/in': POUND_AN_INCH,
  },
  advice: 'Use N/mm, kg/mm or lb/in here.',
  indistinct: 0.02,
  noticed: 2,
  leastTold: 0.5,
  counted: null,
};
