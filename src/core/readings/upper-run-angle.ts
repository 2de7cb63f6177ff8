/** Upper-run angle: slope of the run that pulls under power. */
import { CHAIN, type DriveNoun } from '../parts/drive-noun.ts';
import { angleOf } from '../plane/point.ts';
import { chainRun } from '../standing/chain-run.ts';
import type { Reading } from './reading.ts';
import { withoutRun } from './without-run.ts';

const texts = ({ loop }: DriveNoun) => ({
  help: {
    what: `Slope of the ${loop}’s upper run, the one that is tight under power.`,
    sign: 'Positive when it rises toward the front sprocket.',
    measured:
      'Angle gauge laid on the upper run. Engine off, keys out, out of gear; fingers off the sprockets.',
    feels: 'What counts is where it points against the swingarm: their crossing makes the squat line.',
  },
});

/**
 * Slope of the upper run, radians, positive when it rises toward the front; the free run, without a guide.
 * The common tangent over both pitch circles. No answer with a shaft or hub drive.
 * Example: front teeth 40, rear teeth 40, front sprocket ahead of the axle 600 mm, front sprocket above the axle 100
 * mm → 9.4623°.
 */
export const upperRunAngle: Reading = {
  key: 'upperRunAngle',
  formerly: 'topRunAngle',
  label: 'Upper-run angle',
  group: 'drive',
  quantity: 'angle',
  construction: 'chainRuns',
  read: (stance) => withoutRun(stance) ?? angleOf(chainRun(stance, 'upper').way),
  more: 'rises more toward the front',
  less: 'rises less toward the front',
  belowZero: { more: 'falls less toward the front', less: 'falls more toward the front' },
  acrossZero: { more: 'now rises toward the front', less: 'now falls toward the front' },
  ...texts(CHAIN),
  texts,
};
