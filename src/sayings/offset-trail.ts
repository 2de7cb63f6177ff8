/** The saying “More clamp offset takes trail away, although the wheelbase grows”. */
import type { Saying } from './saying.ts';

/** Common practice, no source; in our own words. */
export const offsetTrail: Saying = {
  key: 'offsetTrail',
  says: 'More triple-clamp [yoke] offset takes trail away, although the wheelbase grows.',
  trials: [
    {
      name: 'Offset: trail',
      turns: [{ adjuster: 'clampOffset', by: 3 }],
      state: 'riderUp',
      figure: 'trail',
      claims: 'less',
    },
    {
      name: 'Offset: wheelbase',
      turns: [{ adjuster: 'clampOffset', by: 3 }],
      state: 'riderUp',
      figure: 'wheelbase',
      claims: 'more',
    },
  ],
  because:
    'Offset moves the wheel forward and the steering axis stays, so the contact patch moves toward where the axis meets the floor.',
};
