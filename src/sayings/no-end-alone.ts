/** The saying “Raise the rear or drop the front: either quickens the steering, and each moves the other end too”. */
import type { Saying } from './saying.ts';

/** Common practice, no source; in our own words. */
export const noEndAlone: Saying = {
  key: 'noEndAlone',
  says: 'Raise the rear or drop the front: either quickens the steering, and each moves the other end too.',
  trials: [
    {
      name: 'Rear raised: rake',
      turns: [{ adjuster: 'shockLength', by: 3 }],
      state: 'riderUp',
      figure: 'rake',
      claims: 'less',
    },
    {
      name: 'Rear raised: trail',
      turns: [{ adjuster: 'shockLength', by: 3 }],
      state: 'riderUp',
      figure: 'trail',
      claims: 'less',
    },
    {
      name: 'Rear raised: swingarm',
      turns: [{ adjuster: 'shockLength', by: 3 }],
      state: 'riderUp',
      figure: 'swingarmAngle',
      claims: 'more',
    },
    {
      name: 'Front dropped: rake',
      turns: [{ adjuster: 'forkTubes', by: 5 }],
      state: 'riderUp',
      figure: 'rake',
      claims: 'less',
    },
    {
      name: 'Front dropped: trail',
      turns: [{ adjuster: 'forkTubes', by: 5 }],
      state: 'riderUp',
      figure: 'trail',
      claims: 'less',
    },
    {
      name: 'Front dropped: swingarm',
      turns: [{ adjuster: 'forkTubes', by: 5 }],
      state: 'riderUp',
      figure: 'swingarmAngle',
      claims: 'less',
    },
  ],
  because:
    'The bike tips about one patch or the other, and everything that is bolted to the frame tips with it.',
  feel: 'How the steering feels also depends on tyres, handlebar and rider. That cannot be computed.',
};
