/** Motion ratio: how far the shock moves for the rear wheel's movement. */
import { rearMotionRatio } from '../springs/at-the-wheel.ts';
import type { Reading } from './reading.ts';

/**
 * Shock stroke per rise of the rear axle, square to the ground as the bike stands; a plain number. Lever of the shock
 * about the pivot over the pivot's distance ahead of the patch (virtual work). Always there; zero at a dead point.
 * Example: shock lever 228 mm, pivot ahead 570 mm → 0.4.
 */
export const motionRatio: Reading = {
  key: 'motionRatio',
  label: 'Motion ratio, shock to wheel',
  group: 'suspension',
  quantity: 'ratio',
  construction: 'rearTravel',
  read: rearMotionRatio,
  more: 'shock moves more for the wheel',
  less: 'shock moves less for the wheel',
  help: {
    what: 'How far the shock moves for the rear wheel’s movement, at this place of the travel: one half is 1 mm of shock for 2 mm of wheel.',
    sign: 'Positive: the shock goes in as the wheel rises.',
    measured:
      'Spring out, frame and wheel supported, a second person holding the bike: lift the wheel by 10 mm about where it stands and see how far the shock moves. A loaded spring can injure: use a spring compressor, or leave it to a workshop.',
    feels:
      'More makes the same spring stiffer at the wheel, by its square; a ratio that rises through the travel makes it progressive, one that falls makes it go soft.',
  },
};
