/** Load-transfer angle: the slope at which the squat line would be neutral. */
import { withoutCentre } from './centre-of-gravity.ts';
import type { Reading } from './reading.ts';

/**
 * Slope of the load-transfer line, radians: from the rear contact patch to the point above the front patch at the
 * height of the whole centre of gravity; tan = height / wheelbase. Positive upward.
 * No answer without mass or with its centre on the ground.
 * Example: wheelbase 1400 mm, centre height 700 mm → 26.565°.
 */
export const loadTransferAngle: Reading = {
  key: 'loadTransferAngle',
  label: 'Load-transfer angle',
  group: 'balance',
  quantity: 'angle',
  construction: 'loadTransferLine',
  read: (stance) => withoutCentre(stance) ?? Math.atan(stance.centre.y / stance.pose.wheelbase),
  more: 'more load transfer',
  less: 'less load transfer',
  help: {
    what: 'Slope of the load-transfer line: how much weight moves rearward for each bit of thrust.',
    sign: 'Positive; it rises toward the front.',
    measured: 'Computed from the height of the centre of gravity and the wheelbase.',
    feels: 'Steeper needs more anti-squat to keep the rear still.',
  },
};
