/** Gap between the upper run and the pivot: whether the chain clears its guide. */
import { CHAIN, type DriveNoun } from '../parts/drive-noun.ts';
import type { Reading } from './reading.ts';
import { withoutRun } from './without-run.ts';

const texts = ({ Loop, loop, slider, sliderInFull }: DriveNoun) => ({
  label: loop === 'chain' ? 'Chain clearance to chain slider' : `${Loop} clearance to pivot`,
  more: `${loop} further from the ${slider}`,
  less: `${loop} nearer the ${slider}`,
  belowZero: { more: `${loop} bends less over the ${slider}`, less: `${loop} bends more over the ${slider}` },
  acrossZero: { more: `${loop} now clears the ${slider}`, less: `${loop} now lies on the ${slider}` },
  help: {
    what: `Clearance between the ${loop}’s upper run and the ${sliderInFull} over the swingarm pivot, or the pivot’s centre without one.`,
    sign: `Positive while the ${loop} runs clear above; at or below zero it lies on the ${slider}.`,
    measured: `Ruler from the ${slider} up to the pin line of the upper run, suspension hanging, on a stand that cannot slip, while a second person holds the bike. Engine off.`,
    feels: `Near or on the ${slider} the ${loop} wears it; the further above the pivot it runs, the more it pulls the rear down.`,
  },
});

/**
 * Free upper run above the pivot guide, mm, square to the run, between pin line and the pin line of a chain lying
 * on the guide; from the pivot centre when the bike has no guide. Zero or less: the chain bends over the guide.
 * No answer with a shaft or hub drive.
 * Example: upper run above the pivot 40 mm, guide radius 32 mm → 8 mm.
 */
export const chainSliderClearance: Reading = {
  key: 'chainSliderClearance',
  formerly: 'topRunPivotGap',
  group: 'drive',
  quantity: 'length',
  construction: 'chainRuns',
  read: (stance) => withoutRun(stance) ?? stance.upperRunLever - (stance.machine.guideRadius ?? 0),
  ...texts(CHAIN),
  texts,
};
