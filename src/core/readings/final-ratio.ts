/** Final ratio: rear teeth to front teeth. */
import type { Reading } from './reading.ts';

/**
 * Rear teeth divided by front teeth; a plain number, always there. Worked: 15 and 45 give 3.
 */
export const finalRatio: Reading = {
  key: 'finalRatio',
  label: 'Final ratio',
  group: 'drive',
  quantity: 'ratio',
  construction: 'chainRuns',
  read: ({ machine }) => machine.rearTeeth / machine.frontTeeth,
  more: 'shorter gearing',
  less: 'taller gearing',
  help: {
    what: 'Turns of the front sprocket for one turn of the rear wheel.',
    sign: 'Always positive.',
    measured: 'Count the teeth: rear divided by front.',
    feels: 'More pulls harder and revs higher; less runs faster at the same revs.',
  },
};
