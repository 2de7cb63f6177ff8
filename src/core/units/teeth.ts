/** Teeth of a sprocket or a belt, counted. */
import { asInCore, inBothSystems, type Quantity } from './quantity.ts';

export const teeth: Quantity = {
  fileUnit: '1',
  ...inBothSystems('teeth', 0),
  fromCore: asInCore,
  typed: { teeth: 1, t: 1 },
  advice: 'Count teeth here.',
  indistinct: 0.5,
  noticed: 1,
  leastTold: 0,
  counted: { name: 'Teeth', one: 'tooth', usual: 16 },
};
