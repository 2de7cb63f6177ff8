/** The contact patch of the front tyre. */
import { succeed } from '../numeric/result.ts';
import { distance } from '../plane/point.ts';
import { always, type BikePoint } from './bike-point.ts';

export const frontPatch: BikePoint = {
  label: 'Front contact patch',
  help: 'Where the front tyre meets the ground. Moving it changes the tyre’s diameter.',
  applies: always,
  place: ({ pose }) => ({ x: pose.wheelbase, y: 0 }),
  move: ({ bike, setup, stance, target }) =>
    succeed({ bike, setup: { ...setup, frontTyre: { diameter: 2 * distance(target, stance.frontAxle) } } }),
  placedBy: {
    fields: [],
    tyre: 'frontTyre',
    words: () => 'A contact patch lies where its tyre touches the ground, so its tyre places it.',
  },
  staysStill: 'frontAxle',
};
