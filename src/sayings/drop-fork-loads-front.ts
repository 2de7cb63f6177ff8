/** The saying “Sliding the fork tubes up puts weight on the front wheel”. */
import type { Saying } from './saying.ts';

/** Common practice, no source; in our own words. */
export const dropForkLoadsFront: Saying = {
  key: 'dropForkLoadsFront',
  says: 'Sliding the fork tubes up puts weight on the front wheel.',
  trials: [
    {
      name: 'Tubes up: weight on the front',
      turns: [{ adjuster: 'forkTubes', by: 8 }],
      state: 'riderUp',
      figure: 'frontWeightShare',
      claims: 'more',
    },
  ],
  because:
    'What counts is how far the centre of gravity moves against the wheelbase. A few mm on more than a metre are little.',
  feel: 'What a rider calls front feel comes from more than weight. That cannot be computed.',
};
