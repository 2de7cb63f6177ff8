/** Speeds on the road: km/h, or miles an hour. */
import { KM_PER_MILE } from './convert.ts';
import { asInCore, type Quantity, unit } from './quantity.ts';

export const speed: Quantity = {
  fileUnit: 'km/h',
  metric: unit('km/h', 1, 1),
  inch: unit('mph', KM_PER_MILE, 1),
  fromCore: asInCore,
  typed: { 'km/h': 1, mph: KM_PER_MILE },
  advice: 'Use km/h or mph here.',
  indistinct: 0.05,
  noticed: 2,
  leastTold: 0,
  counted: null,
};
