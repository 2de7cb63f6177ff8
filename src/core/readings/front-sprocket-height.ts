/** Front sprocket height: the front sprocket above the ground. */
import { CHAIN, type DriveNoun } from '../parts/drive-noun.ts';
import type { Reading } from './reading.ts';
import { withoutRun } from './without-run.ts';

const texts = ({ loop }: DriveNoun) => ({
  help: {
    what: 'Height of the front sprocket’s centre, the countershaft, above the ground.',
    sign: 'Positive above the ground.',
    measured: 'Tape from the floor to the centre of the countershaft.',
    feels: `Compared with pivot and axle it sets which way the ${loop} pulls.`,
  },
});

/**
 * Height of the countershaft (front sprocket centre) above the ground, mm, positive upward. No answer with a shaft or hub drive.
 * Example: pivot height 415 mm, front sprocket above the pivot 15 mm → 430 mm.
 */
export const frontSprocketHeight: Reading = {
  key: 'frontSprocketHeight',
  formerly: 'countershaftHeight',
  label: 'Front sprocket height',
  group: 'drive',
  quantity: 'length',
  construction: 'heights',
  read: (stance) => withoutRun(stance) ?? stance.countershaft.y,
  more: 'higher front sprocket',
  less: 'lower front sprocket',
  ...texts(CHAIN),
  texts,
};
