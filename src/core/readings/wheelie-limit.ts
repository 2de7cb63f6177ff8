/** The acceleration at which the front wheel leaves the ground. */
import { withoutCentre } from './centre-of-gravity.ts';
import type { Reading } from './reading.ts';

/**
 * Acceleration at which the front wheel carries nothing, in g: centre ahead of the rear patch over its height, in
 * this posture, without air drag. Positive forward. From moments about the rear patch. No answer without a centre
 * of gravity above the ground.
 * Example: centre ahead 730 mm, centre height 785 mm → 0.92994 g.
 */
export const wheelieLimit: Reading = {
  key: 'wheelieLimit',
  formerly: 'frontLiftAcceleration',
  label: 'Wheelie limit',
  group: 'balance',
  quantity: 'acceleration',
  construction: 'centreOfGravity',
  read: (stance) => withoutCentre(stance) ?? stance.centre.x / stance.centre.y,
  usual: { least: 0.2, most: 3 },
  more: 'front lifts later',
  less: 'front lifts sooner',
  help: {
    what: 'The acceleration at which the front wheel comes off the ground, grip permitting, in this posture.',
    sign: 'In g, forward.',
    measured: 'Computed from the centre of gravity.',
    feels: 'More lets the gas open earlier; less wheelies sooner.',
  },
};
