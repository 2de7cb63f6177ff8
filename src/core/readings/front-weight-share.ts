/** Weight split: the part of the weight that the front wheel carries. */
import type { Reading } from './reading.ts';
import { absent } from './absent.ts';

/**
 * Part of the weight on the front wheel at rest, per cent of the whole; the rear carries the rest.
 * No answer without any mass.
 * Example: wheelbase 1400 mm, centre ahead 700 mm → 50 %.
 */
export const frontWeightShare: Reading = {
  key: 'frontWeightShare',
  label: 'Weight on the front',
  group: 'balance',
  quantity: 'percent',
  construction: 'centreOfGravity',
  read: ({ mass, centre, pose }) => (mass > 0 ? (100 * centre.x) / pose.wheelbase : absent('noMass')),
  usual: { least: 10, most: 90 },
  more: 'more weight on the front',
  less: 'more weight on the rear',
  help: {
    what: 'Weight split: the share of the whole weight that stands on the front wheel.',
    sign: 'Per cent on the front; the rear has the rest.',
    measured:
      'Scales under both wheels, bike level and upright, rider on board with feet up, a helper holding the bike.',
    feels: 'More plants the front tyre; less helps the rear find grip.',
  },
};
