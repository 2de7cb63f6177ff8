/** Parts of a whole: per cent. */
import { asInCore, inBothSystems, type Quantity } from './quantity.ts';

export const percent: Quantity = {
  fileUnit: '%',
  ...inBothSystems('%', 1),
  fromCore: asInCore,
  typed: { '%': 1 },
  advice: 'Use % here.',
  indistinct: 0.05,
  noticed: 3,
  leastTold: 1,
  counted: null,
  // One step is a tenth, so no change is written as one point alone.
  changeUnit: { one: 'points', many: 'points' },
};
