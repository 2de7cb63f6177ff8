/** The saying “A small front sprocket and a steep arm lay the chain over the pivot”. */
import type { Saying } from './saying.ts';

/** Common practice, no source; in our own words. */
export const chainOnSlider: Saying = {
  key: 'chainOnSlider',
  says: 'A small front sprocket and a steep arm lay the chain over the pivot.',
  trials: [
    {
      name: 'Three teeth less in front',
      turns: [{ adjuster: 'frontTeeth', by: -3 }],
      state: 'toppedOut',
      figure: 'chainSliderClearance',
      claims: 'less',
    },
    {
      name: 'A steeper arm',
      turns: [{ adjuster: 'shockLength', by: 8 }],
      state: 'toppedOut',
      figure: 'chainSliderClearance',
      claims: 'less',
    },
  ],
  because:
    'Both bring the upper run nearer to the pivot. Whether it touches depends on the slider: below zero it lies on it.',
  feel: 'How fast a slider wears through cannot be computed.',
};
