/** Bottom-run angle: slope of the run that pulls off the gas. */
import type { Reading } from './reading.ts';
import { withoutRun } from './without-run.ts';

/**
 * Slope of the bottom run, radians, positive when it rises toward the front; drawn straight, without sag.
 * The common tangent under both pitch circles. No answer with a shaft or hub drive. Worked: sprockets of equal radius with
 * centres 100 up over 600 along give 9.4623°.
 */
export const bottomRunAngle: Reading = {
  key: 'bottomRunAngle',
  label: 'Bottom-run angle',
  group: 'drive',
  quantity: 'angle',
  construction: 'chainRuns',
  read: (stance) => withoutRun(stance) ?? stance.bottomRunAngle,
  more: 'steeper bottom run',
  less: 'flatter bottom run',
  help: {
    what: 'Slope of the chain’s bottom run, the one that is tight off the gas.',
    sign: 'Positive when it rises toward the front sprocket.',
    measured: 'Angle gauge laid on the bottom run, pulled straight.',
    feels: 'It sets what engine braking does to the rear.',
  },
};
