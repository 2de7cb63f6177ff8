/** The chain's part of the anti-squat. */
import { CHAIN, type DriveNoun } from '../parts/drive-noun.ts';
import { percentOfLoadTransfer } from './anti-squat.ts';
import type { Reading } from './reading.ts';
import { withoutRun } from './without-run.ts';

const texts = ({ loop }: DriveNoun) => ({
  label: `Anti-squat, ${loop}’s part`,
  more: `${loop} holds up more`,
  less: `${loop} holds up less`,
  belowZero: { more: `${loop} pulls down less`, less: `${loop} pulls down more` },
  help: {
    what: `The part of the anti-squat that the ${loop}’s pull makes about the swingarm pivot.`,
    sign: 'Negative pulls the rear down: the usual case, with the upper run above the pivot.',
    measured:
      'Computed from the upper run, the pivot, the rear sprocket and the tyre. With the swingarm’s part it makes the whole, up to rounding.',
    feels: 'Changes with every sprocket, even at the same ratio.',
  },
});

/**
 * The chain's part of the anti-squat, per cent: the chain's pull times its distance from the pivot. Negative, pulling
 * the rear down, while the upper run passes above the pivot. No answer without a centre of
 * gravity, or with a shaft or hub drive.
 * Example: rear wheel radius 315 mm, rear teeth 45, pivot ahead 570 mm, upper run above the pivot 40 mm, load-transfer
 * slope 0.4 → −48.57 %.
 */
export const antiSquatChain: Reading = {
  key: 'antiSquatChain',
  group: 'drive',
  quantity: 'percent',
  construction: 'chainRuns',
  read: (stance) => withoutRun(stance) ?? percentOfLoadTransfer(stance, stance.chainSlope),
  ...texts(CHAIN),
  texts,
};
