/** The saying “A longer wheelbase makes a calmer bike”. */
import type { Saying } from './saying.ts';

/** Common practice, no source; in our own words. */
export const longIsCalm: Saying = {
  key: 'longIsCalm',
  says: 'A longer wheelbase makes a calmer bike.',
  trials: [
    {
      name: 'Axle further back: wheelbase',
      turns: [{ adjuster: 'axlePosition', by: 5 }],
      state: 'riderUp',
      figure: 'wheelbase',
      claims: 'more',
    },
    {
      name: 'Axle further back: wheelie limit',
      turns: [{ adjuster: 'axlePosition', by: 5 }],
      state: 'riderUp',
      figure: 'wheelieLimit',
      claims: 'more',
    },
    {
      name: 'Axle further back: circle at the same bar',
      turns: [{ adjuster: 'axlePosition', by: 5 }],
      state: 'midCorner',
      figure: 'cornerRadius',
      claims: 'more',
    },
  ],
  because: 'Load transfer and the circle at the same bar both depend on the wheelbase.',
  feel: 'Calm itself is a feeling. That cannot be computed.',
};
