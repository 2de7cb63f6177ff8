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
  belowZero: { more: 'less far beyond coil-bound', less: 'further beyond coil-bound' },
  help: {
    what: 'How far the fork can still go in before a stop ends it or the spring is coil-bound.',
    sign: 'Positive while travel is left; below zero the spring would be coil-bound already.',
    measured:
      'Tape from the seal to where the fork ends, from the maker’s figures. With the springs out it is a workshop job: the front held by the steering head [headstock], the fork caps unloaded first.',
    feels: 'When little is left, the next bump or hard braking bottoms it.',
  },
};
