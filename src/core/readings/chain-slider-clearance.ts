/** Gap between the upper run and the pivot: whether the chain clears its guide. */
import { CHAIN, type DriveNoun } from '../parts/drive-noun.ts';
import type { Reading } from './reading.ts';
import { withoutRun } from './without-run.ts';

const texts = ({ Loop, loop }: DriveNoun) => ({
  label: loop === 'chain' ? 'Chain clearance to chain slider' : `${Loop} clearance to pivot`,
  more: `${loop} further from the pivot guide`,
  less: `${loop} nearer the pivot guide`,
  help: {
    what: `Gap between the ${loop}’s upper run and the guide over the swingarm pivot (its centre where there is no guide).`,
    sign: `Positive while the ${loop} runs clear above; at or below zero it lies on the guide.`,
    measured: 'Ruler from the pivot’s guide up to the pin line of the upper run, suspension hanging.',
    feels: `Near or on the guide the ${loop} wears it; the further above the pivot it runs, the more it pulls the rear down.`,
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
