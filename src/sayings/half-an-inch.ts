/** The saying “Half an inch at the shock is an inch and a half at the wheel”. */
import type { Saying } from './saying.ts';

/** Common practice, no source; in our own words. */
export const halfAnInch: Saying = {
  key: 'halfAnInch',
  says: 'What the shock gives, the wheel moves about three times over.',
  trials: [
    {
      name: 'Shock 4 mm longer: wheel travel for the shock’s',
      turns: [{ adjuster: 'shockLength', by: 4 }],
      state: 'riderUp',
      figure: 'shockLeverage',
      within: [2.5, 3.5],
    },
  ],
  because:
    'That is a leverage near 3. Bikes with one shock often have 2 to 3, twin shocks often little more than 1.',
};
