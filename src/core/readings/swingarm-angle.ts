/** Swingarm angle: how steeply the swingarm falls from pivot to axle. */
import type { Reading } from './reading.ts';

/**
 * Swingarm angle, radians: the line pivot → rear axle below horizontal, positive when the axle is lower than the
 * pivot. The trade quotes it topped out. Always has an answer.
 * Example: swingarm length 580 mm, pivot above the axle 100 mm → 9.928°.
 */
export const swingarmAngle: Reading = {
  key: 'swingarmAngle',
  label: 'Swingarm angle',
  group: 'rearEnd',
  quantity: 'angle',
  construction: 'swingarmLine',
  quotedIn: 'toppedOut',
  read: (stance) => stance.swingarmAngle,
  usual: { least: -15, most: 40 },
  more: 'steeper swingarm',
  less: 'flatter swingarm',
  belowZero: { more: 'axle rises less above the pivot', less: 'axle rises more above the pivot' },
  acrossZero: { more: 'axle now below the pivot', less: 'axle now above the pivot' },
  help: {
    what: 'Slope of the line from swingarm pivot down to the rear axle.',
    sign: 'Positive when the axle is lower than the pivot. The trade quotes it topped out.',
    measured:
      'Angle gauge along pivot and axle centres, rear wheel hanging, on a stand that cannot slip, while a second person holds the bike; tenths of a degree matter.',
    feels: 'Steeper holds the rear up on the exit; too steep and the tyre loses grip when the gas opens.',
  },
};
