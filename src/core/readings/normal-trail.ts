/** Normal trail: the trail measured square to the steering axis. */
import type { Reading } from './reading.ts';

/**
 * Normal trail, mm: the arm with which a side force at the front patch turns the steering, square to the axis.
 * Positive when the patch is behind the axis. Equals trail·cos(rake) = radius·sin(rake) − offset.
 * Always has an answer.
 * Example: front wheel radius 300 mm, rake 24°, offset 30 mm → 92.021 mm.
 */
export const normalTrail: Reading = {
  key: 'normalTrail',
  label: 'Normal trail',
  group: 'steering',
  quantity: 'length',
  construction: 'trailTriangle',
  read: (stance) => stance.machine.frontRadius * Math.sin(stance.rake) - stance.offset,
  usual: { least: 0, most: 280 },
  more: 'steadier steering',
  less: 'quicker steering',
  felt: {
    from: 2,
    gauge: { more: 'longer', less: 'shorter' },
  },
  belowZero: { more: 'pulls off straight less', less: 'pulls off straight more' },
  help: {
    what: 'The trail square to the steering axis: the true lever by which the tyre centres the steering.',
    sign: 'Positive when the patch is behind the axis.',
    measured: 'Computed from rake, front tyre radius and offset.',
    feels: 'As trail, but it compares bikes of different rake more fairly.',
  },
};
