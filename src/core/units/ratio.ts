/** Ratios: plain numbers. */
import { asInCore, inBothSystems, type Quantity } from './quantity.ts';

export const ratio: Quantity = {
  fileUnit: '1',
  ...inBothSystems('', 3),
  fromCore: asInCore,
  typed: {},
  advice: 'Leave the unit out here.',
  indistinct: 0.0005,
  noticed: 0.1,
  leastTold: 0.02,
  counted: null,
};
