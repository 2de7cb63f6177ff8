/** The saying “After the rear is raised, fork extenders give the front its height back; the front cannot mend the exit”. */
import type { Saying } from './saying.ts';

/** Common practice, no source; in our own words. */
export const extendersAfterRear: Saying = {
  key: 'extendersAfterRear',
  says: 'After the rear is raised, fork extenders bring the rake back, and on the gas the rear is still held up more.',
  trials: [
    {
      name: 'Extenders on a raised rear: rake',
      from: [{ adjuster: 'shockLength', by: 6 }],
      turns: [{ adjuster: 'forkExtenders', by: 8 }],
      state: 'riderUp',
      figure: 'rake',
      claims: 'more',
    },
    {
      name: 'Rear raised: on the gas',
      turns: [{ adjuster: 'shockLength', by: 6 }],
      state: 'accelerating',
      figure: 'antiSquat',
      claims: 'more',
    },
  ],
  because:
    'An extender lifts the front by a little less than its length. Use only extenders that their maker allows for this fork.',
  feel: 'Whether the bike holds its line on the exit cannot be computed. The rider says that.',
};
