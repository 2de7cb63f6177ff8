/** Gap between the upper run and the pivot: whether the chain clears its guide. */
import type { Reading } from './reading.ts';
import { withoutRun } from './without-run.ts';

/**
 * Free upper run above the pivot guide, mm, square to the run, between pin line and the pin line of a chain lying
 * on the guide; from the pivot centre when the bike has no guide. Zero or less: the chain bends over the guide.
 * No answer with a shaft or hub drive.
 * Example: upper run above the pivot 40 mm, guide radius 32 mm → 8 mm.
 */
export const chainSliderClearance: Reading = {
  key: 'chainSliderClearance',
  formerly: 'topRunPivotGap',
  label: 'Chain clearance to chain slider',
  group: 'drive',
  quantity: 'length',
  construction: 'chainRuns',
  read: (stance) => withoutRun(stance) ?? stance.upperRunLever - (stance.machine.guideRadius ?? 0),
  more: 'chain further from the pivot guide',
  less: 'chain nearer the pivot guide',
  help: {
    what: 'Gap between the chain’s upper run and the guide over the swingarm pivot (its centre where there is no guide).',
    sign: 'Positive while the chain runs clear above; at or below zero it lies on the guide.',
    measured: 'Ruler from the pivot’s guide up to the pin line of the upper run, suspension hanging.',
    feels:
      'Near or on the guide the chain wears it; the further above the pivot it runs, the more it pulls the rear down.',
  },
};
