/** Front wheel load: what the front tyre presses on the ground with. */
import type { Reading } from './reading.ts';
import { absent } from './absent.ts';

/**
 * Vertical force of the ground on the front tyre, N, in the ride state; lean does not change it. From the balance of the
 * whole bike about its contact patches. No answer without springs, or in a state that is no balance.
 * Example: mass 280 kg, wheelbase 1400 mm, centre ahead 700 mm → 1372.931 N.
 */
export const frontWheelLoad: Reading = {
  key: 'frontWheelLoad',
  label: 'Front wheel load',
  group: 'suspension',
  quantity: 'force',
  construction: 'wheelLoads',
  read: ({ equilibrium, sprung }) =>
    equilibrium?.front.wheelLoad ?? (sprung === undefined ? absent('noSprings') : absent('notCarried')),
  more: 'more load on the front',
  less: 'less load on the front',
  help: {
    what: 'What the front tyre presses on the road with in this ride state.',
    sign: 'Positive; at zero the front wheel lifts.',
    measured:
      'Scale under the wheel, the other wheel on a block of the scale’s height and chocked, rider on, feet up, a helper holding the bike; moving, computed.',
    feels: 'More grips and steers better, and works the front tyre harder.',
  },
};
