/** The saying “After the rear is raised, fork extenders give the front its height back; the front cannot mend the exit”. */
import type { Saying } from './saying.ts';

/** Common practice, no source; in our own words. */
export const extendersAfterRear: Saying = {
  key: 'extendersAfterRear',
  says: 'After the rear is raised, fork extenders give the front its height back; the front cannot mend the exit.',
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
  because: 'The extender lifts the front end by nearly its length. What the arm holds up is set at the rear.',
};
