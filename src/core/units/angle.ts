/** Angles: degrees, while the core counts in radians. */
import { degrees } from './convert.ts';
import { inBothSystems, type Quantity } from './quantity.ts';

export const angle: Quantity = {
  fileUnit: 'deg',
  ...inBothSystems('°', 2),
  fromCore: degrees,
  typed: { '°': 1, deg: 1, degrees: 1 },
  advice: 'Use degrees here.',
  indistinct: 0.005,
  noticed: 0.25,
  leastTold: 0.1,
  counted: null,
};
