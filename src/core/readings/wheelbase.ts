/** Wheelbase: from contact patch to contact patch. */
import type { Reading } from './reading.ts';

/**
 * Wheelbase, mm: rear to front contact patch along the ground; always positive and always there.
 * √(D² − (front − rear radius)²) with D the axle distance.
 * Example: axle distance 1400 mm, front wheel radius 300 mm, rear wheel radius 320 mm → 1399.8571 mm.
 */
export const wheelbase: Reading = {
  key: 'wheelbase',
  label: 'Wheelbase',
  group: 'steering',
  quantity: 'length',
  construction: 'wheelbase',
  read: (stance) => stance.pose.wheelbase,
  usual: { least: 900, most: 2600 },
  more: 'calmer, wider line',
  less: 'livelier, tighter line',
  felt: {
    from: 5,
    gauge: { more: 'longer', less: 'shorter' },
  },
  help: {
    what: 'Distance between the two contact patches.',
    sign: 'Always positive.',
    measured: 'Tape from axle to axle along the floor, steering straight, both sides the same.',
    feels: 'Longer is steadier and lifts a wheel later; shorter turns tighter.',
  },
};
