/** What engine braking does to the rear: how much of its load transfer chain and swingarm hold down. */
import { engineBrakingSlopeOf } from '../standing/drive-slopes.ts';
import type { Stance } from '../standing/stance.ts';
import { percentOfLoadTransfer } from './anti-squat.ts';
import type { Reading } from './reading.ts';
import type { Absent } from './absent.ts';

/**
 * A slope at the rear wheel as anti-rise, per cent of the load transfer, when the rear makes `rearShare` of the whole
 * braking (1: the rear alone). 100 holds the rear down against all of the load transfer. No answer without a centre of
 * gravity above the ground.
 */
export function antiRise(stance: Stance, slope: number, rearShare = 1): number | Absent {
  return percentOfLoadTransfer(stance, rearShare * slope);
}

/**
 * Anti-rise under engine braking, per cent: 100·slope of the engine-braking line / slope of the load-transfer line,
 * the lower run tight and nothing else braking. 0 lets the rear rise by all of the load transfer, 100 keeps it where
 * it is, below zero lifts it further. Same balance of forces as anti-squat, with the lower run; shaft and hub have the
 * swingarm's part alone. No answer without a centre of gravity above the ground.
 * Example: rear wheel radius 315 mm, rear teeth 45, pivot height 399 mm, pivot ahead 570 mm, lower run below the pivot
 * 76 mm, load-transfer slope 0.4 → 82.72 %.
 */
export const engineBraking: Reading = {
  key: 'engineBraking',
  label: 'Engine braking, anti-rise',
  group: 'drive',
  quantity: 'percent',
  construction: 'engineBrakingLine',
  read: (stance) => {
    const { swingarm, chain } = engineBrakingSlopeOf(stance);
    return antiRise(stance, swingarm + chain);
  },
  more: 'rear held down more off the gas',
  less: 'rear held down less off the gas',
  belowZero: { more: 'rear lifted less off the gas', less: 'rear lifted more off the gas' },
  help: {
    what: 'How much of engine braking’s load transfer drive and swingarm hold down without the spring.',
    sign: '100 % keeps the rear where it is; less lets it rise, below zero lifts it further.',
    measured:
      'Computed from the pivot, the tyre and, with chain or belt, the lower run and the rear sprocket.',
    feels: 'Less makes the rear light and quick to come up as the throttle closes.',
  },
};
