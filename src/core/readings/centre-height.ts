/** Height of the centre of gravity of bike, rider and load. */
import type { Reading } from './reading.ts';
import { absent } from './absent.ts';

/**
 * Height of the whole centre of gravity above the ground, mm, positive upward, with rider and load.
 * No answer without any mass.
 * Example: first mass 100 kg, first mass high 400 mm, second mass 100 kg, second mass high 800 mm → 600 mm.
 */
export const centreHeight: Reading = {
  key: 'centreHeight',
  label: 'Centre of gravity height',
  group: 'balance',
  quantity: 'length',
  construction: 'centreOfGravity',
  read: (stance) => (stance.mass > 0 ? stance.centre.y : absent('noMass')),
  usual: { least: 200, most: 1300 },
  more: 'weight higher up',
  less: 'weight lower down',
  help: {
    what: 'Height of the common centre of gravity of bike, rider and load.',
    sign: 'Positive above the ground.',
    measured: 'From a weigh-in, level and with one axle raised.',
    feels: 'Higher moves more load from wheel to wheel on gas and brakes; lower moves less.',
  },
};
