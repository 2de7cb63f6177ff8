/** Rear axle height: the rear tyre standing on the ground. */
import type { Reading } from './reading.ts';

/**
 * Height of the rear axle above the ground, mm: half the outside diameter of the rear tyre. Always there.
 * Example: rear tyre 180/55-17 → 314.9 mm.
 */
export const rearAxleHeight: Reading = {
  key: 'rearAxleHeight',
  label: 'Rear axle height',
  group: 'rearEnd',
  quantity: 'length',
  construction: 'heights',
  read: (stance) => stance.rearAxle.y,
  more: 'higher rear axle',
  less: 'lower rear axle',
  help: {
    what: 'Height of the rear axle above the ground: the rear tyre’s radius under its load.',
    sign: 'Positive above the ground.',
    measured: 'Tape from the floor to the axle centre, tyre at riding pressure.',
    feels: 'A taller rear tyre raises the tail, makes the gearing taller and takes rake and trail away.',
  },
};
