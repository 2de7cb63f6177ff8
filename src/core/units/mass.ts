/** Masses: kg, or pounds. */
import { KG_PER_POUND } from './convert.ts';
import { asInCore, type Quantity, unit } from './quantity.ts';

export const mass: Quantity = {
  fileUnit: 'kg',
  metric: unit('kg', 1, 1),
  inch: unit('lb', KG_PER_POUND, 1),
  fromCore: asInCore,
  typed: { kg: 1, g: 0.001, lb: KG_PER_POUND, lbs: KG_PER_POUND },
  advice: 'Use kg or lb here.',
  indistinct: 0.05,
  noticed: 5,
  leastTold: 0,
  counted: null,
};
