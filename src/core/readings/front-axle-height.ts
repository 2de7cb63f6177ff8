/** Front axle height: the front tyre standing on the ground. */
import type { Reading } from './reading.ts';

/**
 * Height of the front axle above the ground, mm: half the outside diameter of the front tyre. Always there.
 * Example: front tyre 120/70-17 → 299.9 mm.
 */
export const frontAxleHeight: Reading = {
  key: 'frontAxleHeight',
  label: 'Front axle height',
  group: 'steering',
  quantity: 'length',
  construction: 'heights',
  read: (stance) => stance.frontAxle.y,
  more: 'higher front axle',
  less: 'lower front axle',
  help: {
    what: 'Height of the front axle above the ground: the front tyre’s radius under its load.',
    sign: 'Positive above the ground.',
    measured: 'Tape from the floor to the axle centre, tyre at riding pressure.',
    feels: 'A taller front tyre raises the nose, adding rake and trail.',
  },
};
