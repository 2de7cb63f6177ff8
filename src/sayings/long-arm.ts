/** The saying “With the axle further back in its slot, anti-squat changes less through the travel”. */
import type { Saying } from './saying.ts';

/** Common practice, no source; in our own words. */
export const longArm: Saying = {
  key: 'longArm',
  says: 'With the axle further back in its slot, anti-squat changes less through the travel.',
  trials: [
    {
      name: 'Axle further back: change through the travel',
      turns: [{ adjuster: 'axlePosition', by: 10 }],
      state: 'riderUp',
      figure: 'antiSquatSpread',
      claims: 'less',
    },
  ],
  because:
    'From pivot to axle it is further then, so the swingarm turns by less for the same travel. Ten millimetres are little of that.',
};
