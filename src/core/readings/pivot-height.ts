/** Pivot height: the swingarm pivot above the ground. */
import type { Reading } from './reading.ts';

/**
 * Height of the swingarm pivot above the ground, mm, positive upward. Always has an answer.
 * Example: rear wheel radius 320 mm, swingarm length 580 mm, swingarm angle 10° → 420.716 mm.
 */
export const pivotHeight: Reading = {
  key: 'pivotHeight',
  label: 'Pivot height',
  group: 'rearEnd',
  quantity: 'length',
  construction: 'heights',
  read: (stance) => stance.pose.pivot.y,
  usual: { least: 150, most: 700 },
  more: 'higher pivot',
  less: 'lower pivot',
  help: {
    what: 'Height of the swingarm pivot above the ground.',
    sign: 'Positive above the ground.',
    measured: 'Tape from the floor to the centre of the pivot bolt.',
    feels: 'A higher pivot steepens the swingarm and carries the weight higher.',
  },
};
