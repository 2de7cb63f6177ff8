/** The saying “A longer swingarm means less change of anti-squat through the travel”. */
import type { Saying } from './saying.ts';

/** Common practice, no source; in our own words. */
export const longArm: Saying = {
  key: 'longArm',
  says: 'A longer swingarm means less change of anti-squat through the travel.',
  trials: [
    {
      name: 'Axle further back: change through the travel',
      turns: [{ adjuster: 'axlePosition', by: 10 }],
      state: 'riderUp',
      figure: 'antiSquatSpread',
      claims: 'less',
    },
  ],
  because: 'A longer arm turns by less for the same travel.',
};
