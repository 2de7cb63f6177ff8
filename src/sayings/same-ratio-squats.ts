/** The saying “The same ratio on more teeth squats a little more”. */
import type { Saying } from './saying.ts';

/** Common practice, no source; in our own words. */
export const sameRatioSquats: Saying = {
  key: 'sameRatioSquats',
  says: 'The same ratio on more teeth squats a little more.',
  trials: [
    {
      name: 'From 15/45 to 16/48',
      from: [
        { adjuster: 'frontTeeth', to: 15 },
        { adjuster: 'rearTeeth', to: 45 },
      ],
      turns: [
        { adjuster: 'frontTeeth', to: 16 },
        { adjuster: 'rearTeeth', to: 48 },
      ],
      state: 'accelerating',
      figure: 'antiSquat',
      claims: 'less',
    },
  ],
  because:
    'The pull falls with the bigger sprocket while its lever grows. Which of the two is larger depends on whether the countershaft lies below the line of the swingarm.',
};
