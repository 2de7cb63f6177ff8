/** Parts that a bike has several of, counted. */
import { asInCore, inBothSystems, type Quantity } from './quantity.ts';

export const count: Quantity = {
  fileUnit: '1',
  ...inBothSystems('', 0),
  fromCore: asInCore,
  typed: {},
  advice: 'Count parts here.',
  indistinct: 0.5,
  noticed: 1,
  leastTold: 0,
  counted: { name: 'Parts', one: '', usual: 2 },
};
