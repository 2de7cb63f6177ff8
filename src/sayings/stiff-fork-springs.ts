/** The saying “Stiffer fork springs hold the nose up: slower steering until the tubes are slid up”. */
import type { Saying } from './saying.ts';

/** Common practice, no source; in our own words. */
export const stiffForkSprings: Saying = {
  key: 'stiffForkSprings',
  says: 'Stiffer fork springs hold the nose up: slower steering until the tubes are slid up.',
  trials: [
    {
      name: 'Fork springs a tenth stiffer: rake',
      turns: [{ adjuster: 'forkSpringRate', times: 1.1 }],
      state: 'riderUp',
      figure: 'rake',
      claims: 'more',
    },
    {
      name: 'Fork springs a tenth stiffer, on the brakes: rake',
      turns: [{ adjuster: 'forkSpringRate', times: 1.1 }],
      state: 'braking',
      figure: 'rake',
      claims: 'more',
    },
  ],
  because: 'A stiffer spring gives way by less under the same load, so the front stands higher.',
  feel: 'How the steering feels also depends on tyres, handlebar and rider. That cannot be computed.',
};
