/** How far the centre of gravity is ahead of the rear contact patch. */
import type { Reading } from './reading.ts';
import { absent } from './absent.ts';

/**
 * Whole centre of gravity ahead of the rear contact patch along the ground, mm, positive forward.
 * No answer without any mass.
 * Example: first mass 100 kg, first mass ahead 600 mm, second mass 100 kg, second mass ahead 800 mm → 700 mm.
 */
export const centrePosition: Reading = {
  key: 'centrePosition',
  label: 'Centre of gravity ahead of rear contact patch',
  group: 'balance',
  quantity: 'length',
  construction: 'centreOfGravity',
  read: (stance) => (stance.mass > 0 ? stance.centre.x : absent('noMass')),
  more: 'weight further forward',
  less: 'weight further back',
  help: {
    what: 'How far the common centre of gravity lies ahead of the rear contact patch.',
    sign: 'Positive forward.',
    measured: 'Scales under both wheels: wheelbase times front weight over whole weight.',
    feels: 'Further forward keeps the front down; further back gives the rear tyre grip.',
  },
};
