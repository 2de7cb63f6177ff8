/** The saying “A bigger rear sprocket flattens the upper run, so the bike squats more”. */
import type { Saying } from './saying.ts';

/** Common practice, no source; in our own words. */
export const bigRearSprocket: Saying = {
  key: 'bigRearSprocket',
  says: 'A bigger rear sprocket flattens the upper run, so the bike squats more.',
  trials: [
    {
      name: 'Two teeth more: the upper run',
      turns: [{ adjuster: 'rearTeeth', by: 2 }],
      state: 'accelerating',
      figure: 'upperRunAngle',
      claims: 'less',
    },
    {
      name: 'Two teeth more: on the gas',
      turns: [{ adjuster: 'rearTeeth', by: 2 }],
      state: 'accelerating',
      figure: 'antiSquat',
      claims: 'less',
    },
  ],
  because:
    'A bigger sprocket moves the upper run, but it also needs less pull for the same push at the tyre. Both count.',
};
