/** Radii of a corner's circle: mm in the core and in files, shown as roads are measured, in metres or feet. */
import { MM_PER_INCH } from './convert.ts';
import { asInCore, type Quantity, unit } from './quantity.ts';

/** Millimetres in a metre and in a foot, exact. */
const MM_PER_METRE = 1000;
const MM_PER_FOOT = 12 * MM_PER_INCH;

export const circle: Quantity = {
  fileUnit: 'mm',
  metric: unit('m', MM_PER_METRE, 2),
  inch: unit('ft', MM_PER_FOOT, 1),
  fromCore: asInCore,
  typed: { mm: 1, m: MM_PER_METRE, ft: MM_PER_FOOT },
  advice: 'Use m or ft here.',
  // As fine as a tape laid on a road shows.
  indistinct: 10,
  // The change of line that a rider notices: common practice, no source.
  noticed: 300,
  leastTold: 0,
  counted: null,
};
