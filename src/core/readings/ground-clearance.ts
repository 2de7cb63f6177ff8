/** Ground clearance: how high the lowest of the measured parts stands. */
import { lowestUpright } from '../standing/touch-height.ts';
import { absent } from './absent.ts';
import type { Reading } from './reading.ts';

/**
 * Height above the ground of the lowest of the parts that may touch, mm, the bike upright; negative below the ground.
 * No answer while no part is measured.
 * Example: pivot height 415 mm, part below the pivot 265 mm → 150 mm.
 */
export const groundClearance: Reading = {
  key: 'groundClearance',
  label: 'Ground clearance',
  group: 'balance',
  quantity: 'length',
  construction: 'clearance',
  read: (stance) => lowestUpright(stance)?.height ?? absent('nothingMeasured'),
  more: 'more room below',
  less: 'less room below',
  belowZero: { more: 'less deep in the ground', less: 'deeper in the ground' },
  acrossZero: { more: 'clear of the ground now', less: 'a part is in the ground now' },
  help: {
    what: 'Height of the lowest measured part above the ground: footrest, silencer, belly or side stand, as far as their half widths are entered in Edit.',
    sign: 'Positive above the ground.',
    measured: 'Tape from the floor, the bike upright and loaded as in the ride state shown.',
    feels: 'Less of it grounds over kerbs and bumps. A lowered bike has less.',
  },
};
