/** Rake: how far the steering axis leans back. */
import type { Reading } from './reading.ts';

/**
 * Rake: the steering axis from vertical, positive when its top leans back. Radians.
 * Given by the axis in the frame, the head insert and the frame's pitch on the ground. Always has an answer.
 * Example: axis in the frame 24°, frame nose down 0.5° → 23.5°.
 */
export const rake: Reading = {
  key: 'rake',
  label: 'Rake',
  group: 'steering',
  quantity: 'angle',
  construction: 'steeringAxis',
  read: (stance) => stance.rake,
  usual: { least: 5, most: 60 },
  more: 'slower steering',
  less: 'quicker steering',
  felt: {
    from: 0.25,
    gauge: { more: 'slacker axis', less: 'steeper axis' },
  },
  help: {
    what: 'How far the steering axis leans back from upright.',
    sign: 'Positive when the top of the axis leans back, toward the rider.',
    measured: 'Angle gauge on the steering head or a fork leg, bike upright on level ground.',
    feels: 'More is calmer on the straight and slower to turn; less turns quicker and can feel nervous.',
  },
};
