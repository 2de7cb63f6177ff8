/** Squat ratio: load transfer against the squat line, as the textbooks write it. */
import { CHAIN, type DriveNoun } from '../parts/drive-noun.ts';
import { withoutCentre } from './centre-of-gravity.ts';
import type { Reading } from './reading.ts';
import { absent } from './absent.ts';

/** Squat slopes nearer to level than this are rounding, and their ratio would be noise. */
const LEVEL_SLOPE = 1e-9;

const texts = ({ loop }: DriveNoun) => ({
  help: {
    what: `Load transfer compared with what ${loop} and swingarm hold up.`,
    sign: 'Above about 1 the rear squats on the gas, from 0 to 1 it lifts; Neutral anti-squat says where exactly on this bike. Below zero the drive itself pulls it down (pro-squat).',
    measured: 'Computed; it is the inverse of anti-squat.',
    feels: 'Above 1 the rear sits down and the front runs wide; from 0 to 1 it rises and the tyre may spin.',
  },
});

/**
 * Squat ratio, a plain number: tan(load-transfer angle) / tan(squat angle). Above 1 the rear squats on the gas,
 * at 1 it stays, below 1 it lifts; negative with a pro-squat line. Source: V. Cossalter, Motorcycle Dynamics,
 * 2nd ed. 2006, chapter on the rear suspension (from memory). No answer when the squat line lies level, or
 * without a centre of gravity.
 * Example: rear wheel radius 315 mm, rear teeth 45, pivot height 420 mm, pivot ahead 570 mm, upper run above the pivot
 * 40 mm, load-transfer slope 0.4 → 0.737.
 */
export const squatRatio: Reading = {
  key: 'squatRatio',
  label: 'Squat ratio',
  group: 'drive',
  quantity: 'ratio',
  construction: 'squatLine',
  read: (stance) => {
    const without = withoutCentre(stance);
    if (without !== null) return without;
    const slope = stance.swingarmSlope + stance.chainSlope;
    if (Math.abs(slope) < LEVEL_SLOPE) return absent('neverSquats');
    return stance.centre.y / stance.pose.wheelbase / slope;
  },
  more: 'held up less on the gas',
  less: 'held up more on the gas',
  belowZero: { more: 'pulled down more on the gas', less: 'pulled down less on the gas' },
  acrossZero: { more: 'no longer pulled down on the gas', less: 'now pulled down on the gas' },
  ...texts(CHAIN),
  texts,
};
