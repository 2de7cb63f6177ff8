/** Fork travel left: how far the fork can still go in. */
import type { Reading } from './reading.ts';

/**
 * Fork travel left, mm along the legs: to the stop, or to where the coils close when the springs are known and close
 * first. Below zero when the travel set lies beyond closed coils. Always there.
 * Example: fork travel 120 mm, fork travel used 42 mm → 78 mm.
 */
export const frontTravelLeft: Reading = {
  key: 'frontTravelLeft',
  label: 'Fork travel left',
  group: 'suspension',
  quantity: 'length',
  construction: 'forkTravel',
  read: ({ travel, machine, sprung }) => (sprung?.most.front ?? machine.front.travel) - travel.front,
  more: 'more fork travel left',
  less: 'less fork travel left',
  help: {
    what: 'How far the fork can still go in before a stop or closed coils end it.',
    sign: 'Positive while travel is left; below zero the coils would have closed already.',
    measured: 'Tape from the seal to where the fork ends, from the maker’s figures or with the springs out.',
    feels: 'When little is left, the next bump or hard braking bottoms it.',
  },
};
