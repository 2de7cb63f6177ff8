/** The saying “From the brakes to mid-corner turn the front; from the gas on turn the rear”. */
import type { Saying } from './saying.ts';

/** Common practice, no source; in our own words. */
export const frontInRearOut: Saying = {
  key: 'frontInRearOut',
  says: 'From the brakes to mid-corner adjust the front; from the gas on adjust the rear.',
  trials: [
    {
      name: 'Fork tubes on the brakes: trail',
      turns: [{ adjuster: 'forkTubes', by: 5 }],
      state: 'braking',
      figure: 'trail',
      claims: 'less',
    },
    {
      name: 'Shock on the gas: anti-squat',
      turns: [{ adjuster: 'shockLength', by: 3 }],
      state: 'accelerating',
      figure: 'antiSquat',
      claims: 'more',
    },
  ],
  because: 'On the brakes the front carries more of the load, on the gas the rear.',
  feel: 'It is a rule of feel. What the rider feels at each place cannot be computed.',
};
