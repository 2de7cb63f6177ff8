/** Forces: newtons, or pounds-force. */
import { NEWTON_PER_POUND_FORCE } from './convert.ts';
import { asInCore, type Quantity, unit } from './quantity.ts';

export const force: Quantity = {
  fileUnit: 'N',
  metric: unit('N', 1, 0),
  inch: unit('lbf', NEWTON_PER_POUND_FORCE, 1),
  fromCore: asInCore,
  typed: { n: 1, kn: 1000, lbf: NEWTON_PER_POUND_FORCE, lb: NEWTON_PER_POUND_FORCE },
  advice: 'Use N or lbf here.',
  indistinct: 0.5,
  noticed: 50,
  leastTold: 10,
  counted: null,
};
