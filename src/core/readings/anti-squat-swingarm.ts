/** The swingarm's part of the anti-squat. */
import { percentOfLoadTransfer } from './anti-squat.ts';
import type { Reading } from './reading.ts';

/**
 * The swingarm's part of the anti-squat, per cent: the thrust at the contact patch about the pivot. Positive holds
 * the rear up. With the chain's part it sums to the anti-squat. No answer without a centre of gravity.
 * Example: pivot height 420 mm, pivot ahead 570 mm, load-transfer slope 0.4 → 184.21 %.
 */
export const antiSquatSwingarm: Reading = {
  key: 'antiSquatSwingarm',
  label: 'Anti-squat, swingarm’s part',
  group: 'drive',
  quantity: 'percent',
  construction: 'swingarmLine',
  read: (stance) => percentOfLoadTransfer(stance, stance.swingarmSlope),
  more: 'swingarm holds up more',
  less: 'swingarm holds up less',
  belowZero: { more: 'swingarm pulls down less', less: 'swingarm pulls down more' },
  help: {
    what: 'The part of the anti-squat that the thrust makes about the swingarm pivot.',
    sign: 'Positive holds the rear up.',
    measured: 'Computed from pivot height and its distance ahead of the rear contact patch.',
    feels: 'Grows with a higher pivot, a steeper and a shorter swingarm.',
  },
};
