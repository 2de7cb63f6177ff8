/** Leverage: how far the rear wheel moves for the shock's movement. */
import { leverage } from '../linkage/leverage.ts';
import { rearMotionRatio } from '../springs/at-the-wheel.ts';
import type { Reading } from './reading.ts';
import { absent } from './absent.ts';

/**
 * Rise of the rear axle per shock stroke, as workshops quote it: the inverse of the motion ratio, "2.5 to 1". No
 * answer at a dead point, where the shock stands still.
 * Example: shock lever 228 mm, pivot ahead 570 mm → 2.5.
 */
export const shockLeverage: Reading = {
  key: 'shockLeverage',
  label: 'Leverage, wheel to shock',
  group: 'suspension',
  quantity: 'ratio',
  construction: 'rearTravel',
  read: (stance) => leverage(rearMotionRatio(stance)) ?? absent('deadPoint'),
  more: 'wheel moves more for the shock',
  less: 'wheel moves less for the shock',
  help: {
    what: 'How many mm the rear wheel moves for one mm of the shock: 3 is 3 to 1.',
    sign: 'Positive: the wheel rises as the shock goes in.',
    measured:
      'Spring out, frame and wheel supported, a second person holding the bike: lift the wheel by 10 mm about where it stands and divide by what the shock moves. A loaded spring can injure: use a spring compressor, or leave it to a workshop.',
    feels: 'More needs a stiffer spring for the same wheel rate and loads links and shock harder.',
  },
};
