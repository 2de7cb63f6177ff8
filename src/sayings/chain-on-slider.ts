/** The saying “A small front sprocket and a steep arm lay the chain over the pivot”. */
import type { Saying } from './saying.ts';

/** Common practice, no source; in our own words. */
export const chainOnSlider: Saying = {
  key: 'chainOnSlider',
  says: 'A small front sprocket and a steep swingarm bring the chain down toward the chain slider.',
  trials: [
    {
      name: 'Three teeth less in front',
      turns: [{ adjuster: 'frontTeeth', by: -3 }],
      state: 'toppedOut',
      figure: 'chainSliderClearance',
      claims: 'less',
    },
    {
      name: 'A steeper swingarm',
      turns: [{ adjuster: 'shockLength', by: 8 }],
      state: 'toppedOut',
      figure: 'chainSliderClearance',
      claims: 'less',
    },
  ],
  because:
    'How near the upper run comes to the pivot decides. At zero or below, the chain lies on the chain slider [rub strip].',
  feel: 'How fast a chain slider wears through cannot be computed.',
};
