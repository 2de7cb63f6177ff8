/** The saying “Preload raises the bike; it does not stiffen it”. */
import type { Saying } from './saying.ts';

/** Common practice, no source; in our own words. */
export const preloadRaises: Saying = {
  key: 'preloadRaises',
  says: 'Preload raises the bike; it does not stiffen it.',
  trials: [
    {
      name: 'Shock preload: travel used',
      turns: [{ adjuster: 'shockPreload', by: 4 }],
      state: 'riderUp',
      figure: 'rearTravel',
      claims: 'less',
    },
    {
      name: 'Shock preload: wheel rate',
      turns: [{ adjuster: 'shockPreload', by: 4 }],
      state: 'riderUp',
      figure: 'rearWheelRate',
      claims: 'same',
    },
    {
      name: 'Fork preload: wheel rate',
      turns: [{ adjuster: 'forkPreload', by: 4 }],
      state: 'riderUp',
      figure: 'frontWheelRate',
      claims: 'same',
    },
  ],
  because:
    'The spring keeps its rate. Where rear links change their leverage through the travel, another place of the travel is another wheel rate: that is the links, not the preload.',
};
