/** The saying “A heavy rider sinks the rear, and the steering gets slow”. */
import type { Saying } from './saying.ts';

/** Common practice, no source; in our own words. */
export const heavyRider: Saying = {
  key: 'heavyRider',
  says: 'A heavy rider sinks the rear, and the steering gets slow.',
  trials: [
    {
      name: '20 kg more: rear travel',
      turns: [{ adjuster: 'riderMass', by: 20 }],
      state: 'riderUp',
      figure: 'rearTravel',
      claims: 'more',
    },
    {
      name: '20 kg more: rake',
      turns: [{ adjuster: 'riderMass', by: 20 }],
      state: 'riderUp',
      figure: 'rake',
      claims: 'more',
    },
  ],
  because:
    'A rider sits nearer to the rear wheel on most bikes. How the springs of both ends share the rest decides which end sinks more.',
  feel: 'How the steering feels also depends on tyres, handlebar and rider. That cannot be computed.',
};
