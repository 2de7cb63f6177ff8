/** Rear wheel load: what the rear tyre presses on the ground with. */
import type { Reading } from './reading.ts';
import { absent } from './absent.ts';

/**
 * Vertical force of the ground on the rear tyre, N, in the ride state; lean does not change it. From the balance of the
 * whole bike about its contact patches. No answer without springs, or in a state that is no balance.
 * Example: mass 280 kg, wheelbase 1400 mm, centre ahead 500 mm → 1765.197 N.
 */
export const rearWheelLoad: Reading = {
  key: 'rearWheelLoad',
  label: 'Rear wheel load',
  group: 'suspension',
  quantity: 'force',
  construction: 'wheelLoads',
  read: ({ equilibrium, sprung }) =>
    equilibrium?.rear.wheelLoad ?? (sprung === undefined ? absent('noSprings') : absent('notCarried')),
  more: 'more load on the rear',
  less: 'less load on the rear',
  help: {
    what: 'What the rear tyre presses on the road with in this ride state.',
    sign: 'Positive; at zero the rear wheel lifts.',
    measured:
      'Scale under the wheel, the other wheel on a block of the scale’s height and chocked, rider on, feet up, a helper holding the bike; moving, computed.',
    feels: 'More drives better out of corners; too little lets the rear step out on the brakes.',
  },
};
