/** Rear travel left: how far the rear axle can still rise. */
import type { Reading } from './reading.ts';

/**
 * Rear travel left, mm at the axle: to the end of shock or links, or to where the coils close when the springs are
 * known and close first. Below zero when the travel set lies beyond closed coils. Always there.
 * Example: rear travel 130 mm, rear travel used 35 mm → 95 mm.
 */
export const rearTravelLeft: Reading = {
  key: 'rearTravelLeft',
  label: 'Rear travel left',
  group: 'suspension',
  quantity: 'length',
  construction: 'rearTravel',
  read: ({ travel, machine, sprung }) => (sprung?.most.rear ?? machine.rear.wheelTravel) - travel.rear,
  more: 'more rear travel left',
  less: 'less rear travel left',
  belowZero: { more: 'less far beyond coil-bound', less: 'further beyond coil-bound' },
  help: {
    what: 'How far the rear axle can still rise before a stop ends it or the spring is coil-bound.',
    sign: 'Positive while travel is left; below zero the spring would be coil-bound already.',
    measured:
      'Whole travel less what is used. A ring on the shock’s rod shows shock stroke: multiply by the leverage.',
    feels: 'When little is left, the next bump, a load or a passenger bottoms it.',
  },
};
