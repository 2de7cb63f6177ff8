/** Accelerations: in g, standard gravity. */
import { asInCore, inBothSystems, type Quantity } from './quantity.ts';

export const acceleration: Quantity = {
  fileUnit: 'g',
  ...inBothSystems('g', 2),
  fromCore: asInCore,
  typed: { g: 1 },
  advice: 'Use g here, as in 0.9 g.',
  indistinct: 0.005,
  noticed: 0.03,
  leastTold: 0.02,
  counted: null,
};
