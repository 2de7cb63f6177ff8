/** Anti-squat: how much of the load transfer chain and swingarm hold up by themselves. */
import { CHAIN, type DriveNoun } from '../parts/drive-noun.ts';
import type { Stance } from '../standing/stance.ts';
import { withoutCentre } from './centre-of-gravity.ts';
import { neutralAntiSquat } from './neutral-anti-squat.ts';
import type { Reading } from './reading.ts';
import type { Absent } from './absent.ts';

/**
 * A squat slope as a percentage of the load-transfer slope at this stance. No answer without a centre of gravity
 * above the ground.
 */
export function percentOfLoadTransfer(stance: Stance, slope: number): number | Absent {
  return withoutCentre(stance) ?? (100 * slope * stance.pose.wheelbase) / stance.centre.y;
}

const texts = ({ loop }: DriveNoun) => ({
  help: {
    what: `How much of the load transfer the ${loop} pull and swingarm hold up without the spring.`,
    sign: 'Near 100 % the rear neither squats nor lifts; Neutral anti-squat says where exactly on this bike. Below it the rear squats, above it lifts; below zero the drive pulls it down.',
    measured: 'Computed. The weight of wheel and swingarm shifts the neutral point by a few points.',
    feels: 'More holds the line on the exit; too much takes away grip as the throttle opens.',
  },
});

/**
 * Anti-squat, per cent: 100·tan(squat angle) / tan(load-transfer angle). 100 is neutral for a massless arm and
 * wheel; below it the rear squats on the gas, above it lifts, below zero is pro-squat. The inverse of the squat
 * ratio (Cossalter 2006, from memory). No answer without a centre of gravity above the ground.
 * Example: rear wheel radius 315 mm, rear teeth 45, pivot height 420 mm, pivot ahead 570 mm, upper run above the pivot
 * 40 mm, load-transfer slope 0.4 → 135.64 %.
 */
export const antiSquat: Reading = {
  key: 'antiSquat',
  label: 'Anti-squat',
  group: 'drive',
  quantity: 'percent',
  construction: 'squatLine',
  read: (stance) => percentOfLoadTransfer(stance, stance.swingarmSlope + stance.chainSlope),
  heldAgainst: { name: 'neutral on this bike', read: neutralAntiSquat.read },
  usual: { least: -150, most: 400 },
  more: 'held up more on the gas',
  less: 'held up less on the gas',
  felt: { from: 3 },
  belowZero: { more: 'pulled down less on the gas', less: 'pulled down more on the gas' },
  ...texts(CHAIN),
  texts,
};
