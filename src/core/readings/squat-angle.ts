/** Squat angle: the slope of the squat line. */
import { CHAIN, type DriveNoun } from '../parts/drive-noun.ts';
import type { Reading } from './reading.ts';

const texts = ({ loop }: DriveNoun) => ({
  help: {
    what: `Slope of the squat line, from the rear contact patch to where ${loop} and swingarm lines cross.`,
    sign: `Positive when it rises toward the front; below zero ${loop} and swingarm together pull the rear down.`,
    measured: 'Computed from pivot, axle, sprockets and tyre.',
    feels: 'The nearer to the load-transfer line, the less the rear moves when the gas opens.',
  },
});

/**
 * Slope of the squat line as an angle, radians: the line from the rear contact patch along which the drive force
 * leaves the rear spring alone. Positive when it rises toward the front; negative is pro-squat.
 * From the balance of forces (see squat-slope.ts), so it never turns round. Always has an answer.
 * Example: rear wheel radius 315 mm, rear teeth 45, pivot height 420 mm, pivot ahead 570 mm, upper run above the pivot
 * 40 mm → 28.483°.
 */
export const squatAngle: Reading = {
  key: 'squatAngle',
  label: 'Squat angle',
  group: 'drive',
  quantity: 'angle',
  construction: 'squatLine',
  read: (stance) => Math.atan(stance.swingarmSlope + stance.chainSlope),
  more: 'steeper squat line',
  less: 'flatter squat line',
  belowZero: {
    more: 'squat line falls less toward the front',
    less: 'squat line falls more toward the front',
  },
  acrossZero: {
    more: 'squat line now rises toward the front',
    less: 'squat line now falls toward the front',
  },
  ...texts(CHAIN),
  texts,
};
