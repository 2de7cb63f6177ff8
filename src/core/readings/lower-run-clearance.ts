/** Gap between the lower run and the guide under the pivot: whether the chain clears it with the throttle closed. */
import { CHAIN, type DriveNoun } from '../parts/drive-noun.ts';
import { lowerRunLever } from '../standing/drive-slopes.ts';
import type { Reading } from './reading.ts';
import { withoutRun } from './without-run.ts';

const texts = ({ Loop, loop, slider, sliderInFull }: DriveNoun) => ({
  label: `${Loop} clearance under the pivot`,
  more: `lower run further below the ${slider}`,
  less: `lower run nearer the ${slider}`,
  belowZero: {
    more: `lower run bends less under the ${slider}`,
    less: `lower run bends more under the ${slider}`,
  },
  help: {
    what: `Clearance between the ${loop}’s taut lower run and the ${sliderInFull} under the swingarm pivot, or the pivot’s centre without one.`,
    sign: `Positive while the ${loop} runs clear below; at or below zero it lies on the ${slider} with the throttle closed.`,
    measured: `Ruler from the ${slider} down to the pin line of the lower run, pulled tight. Engine off, keys out, out of gear; fingers off the sprockets.`,
    feels: `Near the pivot the closed throttle pulls the rear down less; on the ${slider} the ${loop} wears it.`,
  },
});

/**
 * Free lower run below the lower pivot guide, mm, square to the run, between pin line and the pin line of a chain lying
 * on the guide; from the pivot centre when the bike has no guide. Zero or less: the chain bends under the guide.
 * No answer with a shaft or hub drive.
 * Example: lower run below the pivot 76 mm, guide radius 32 mm → 44 mm.
 */
export const lowerRunClearance: Reading = {
  key: 'lowerRunClearance',
  group: 'drive',
  quantity: 'length',
  construction: 'chainRuns',
  read: (stance) => withoutRun(stance) ?? -lowerRunLever(stance) - (stance.machine.lowerGuideRadius ?? 0),
  ...texts(CHAIN),
  texts,
};
