/** The saying “Swingarm angles are read with the wheel hanging, and tenths of a degree count on the gas”. */
import type { Saying } from './saying.ts';

/** Common practice, no source; in our own words. */
export const tenthsOfArm: Saying = {
  key: 'tenthsOfArm',
  says: 'Swingarm angles are read with the wheel hanging, and tenths of a degree count on the gas.',
  trials: [
    {
      name: 'Rear raised: the hanging swingarm',
      turns: [{ adjuster: 'shockLength', by: 1 }],
      state: 'toppedOut',
      figure: 'swingarmAngle',
      claims: 'more',
    },
    {
      name: 'Rear raised: on the gas',
      turns: [{ adjuster: 'shockLength', by: 1 }],
      state: 'accelerating',
      figure: 'antiSquat',
      claims: 'more',
    },
  ],
  because: 'A small change of swingarm angle changes anti-squat: the two figures show by how much.',
  feel: 'At which angle a tyre starts to spin depends on grip and rider. That cannot be computed.',
};
