/** Final drive ratio: rear teeth to front teeth. */
import type { Reading } from './reading.ts';
import { withoutRun } from './without-run.ts';

/**
 * Rear teeth divided by front teeth; a plain number. No answer with a shaft or hub drive.
 * Example: front teeth 14, rear teeth 42 → 3.
 */
export const finalDriveRatio: Reading = {
  key: 'finalDriveRatio',
  formerly: 'finalRatio',
  label: 'Final drive ratio',
  group: 'drive',
  quantity: 'ratio',
  construction: 'chainRuns',
  read: (stance) => withoutRun(stance) ?? stance.machine.rearTeeth / stance.machine.frontTeeth,
  more: 'shorter gearing',
  less: 'taller gearing',
  help: {
    what: 'Turns of the front sprocket for one turn of the rear wheel.',
    sign: 'Always positive.',
    measured: 'Count the teeth: rear divided by front.',
    feels: 'More pulls harder and revs higher; less runs faster at the same revs.',
  },
};
