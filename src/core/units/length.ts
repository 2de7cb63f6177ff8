/** Lengths: mm, or inches. */
import { MM_PER_INCH } from './convert.ts';
import { asInCore, type Quantity, unit } from './quantity.ts';

export const length: Quantity = {
  fileUnit: 'mm',
  metric: unit('mm', 1, 1),
  inch: unit('in', MM_PER_INCH, 2),
  fromCore: asInCore,
  typed: { mm: 1, cm: 10, m: 1000, in: MM_PER_INCH, inch: MM_PER_INCH, '"': MM_PER_INCH, '″': MM_PER_INCH },
  advice: 'Use mm, cm or in here.',
  // Half a thousandth of an inch.
  indistinct: 0.0127,
  noticed: 3,
  leastTold: 1,
  counted: null,
};
