/** The contact patch of the rear tyre. */
import { succeed } from '../numeric/result.ts';
import { distance } from '../plane/point.ts';
import { always, type BikePoint } from './bike-point.ts';

export const rearPatch: BikePoint = {
  label: 'Rear contact patch',
  help: 'Where the rear tyre meets the ground. Moving it changes the tyre’s diameter.',
  applies: always,
  place: () => ({ x: 0, y: 0 }),
  move: ({ bike, setup, stance, target }) =>
    succeed({ bike, setup: { ...setup, rearTyre: { diameter: 2 * distance(target, stance.rearAxle) } } }),
  placedBy: {
    fields: [],
    tyre: 'rearTyre',
    words: () => 'A contact patch lies where its tyre touches the ground, so its tyre places it.',
  },
  staysStill: 'rearAxle',
};
