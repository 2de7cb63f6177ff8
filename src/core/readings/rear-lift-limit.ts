/** The deceleration at which the rear wheel leaves the ground. */
import { withoutCentre } from './centre-of-gravity.ts';
import type { Reading } from './reading.ts';

/**
 * Deceleration at which the rear wheel carries nothing, in g: the centre's distance behind the front patch over its
 * height, in this posture, without air drag. Positive is slowing down. From moments about the front patch. No answer
 * without a centre of gravity above the ground.
 * Example: wheelbase 1400 mm, centre ahead 1050 mm, centre height 950 mm → 0.36842 g.
 */
export const rearLiftLimit: Reading = {
  key: 'rearLiftLimit',
  formerly: 'rearLiftDeceleration',
  label: 'Rear-lift [stoppie] limit',
  group: 'balance',
  quantity: 'acceleration',
  construction: 'centreOfGravity',
  read: (stance) => withoutCentre(stance) ?? (stance.pose.wheelbase - stance.centre.x) / stance.centre.y,
  usual: { least: 0.2, most: 3 },
  more: 'rear lifts later',
  less: 'rear lifts sooner',
  help: {
    what: 'The braking at which the rear wheel comes off the ground, grip permitting, in this posture.',
    sign: 'In g, slowing down.',
    measured: 'Computed from the centre of gravity.',
    feels: 'More allows harder braking; less lifts the tail sooner.',
  },
};
