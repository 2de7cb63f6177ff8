/** What opening the gas does to the rear on the road, in mm. */
import { absent } from '../readings/absent.ts';
import { squatOnGas } from '../riding/squat-on-gas.ts';
import type { TrialFigure } from './trial-figure.ts';

/** Lift of the rear as the gas opens, mm of rear travel against steady speed; below zero it squats. */
export const squatOnRoad: TrialFigure = {
  key: 'squatOnRoad',
  label: 'Rear as the gas opens',
  quantity: 'length',
  isChange: true,
  more: 'rear lifts',
  less: 'rear squats',
  same: 'rear stays',
  of: (_, on) => {
    const squat = squatOnGas(on);
    return squat === null ? absent('notCarried') : -squat;
  },
};
