/** Neutral anti-squat: the anti-squat at which the rear spring feels nothing of the gas. */
import { neutralAntiSquat as neutralOf } from '../riding/equilibrium/neutral-anti-squat.ts';
import { withoutCentre } from './centre-of-gravity.ts';
import type { Reading } from './reading.ts';
import { absent } from './absent.ts';

/**
 * Anti-squat at which opening the gas asks nothing of the rear spring, per cent: 100 for a massless arm and wheel, more
 * by what pushing the unsprung rear forward presses it down (neutral-anti-squat.ts of the springs). No answer without
 * a centre of gravity above the ground.
 * Example: mass 280 kg, rear unsprung mass 20 kg, rear wheel radius 300 mm, pivot height 384 mm, pivot ahead 600 mm,
 * wheelbase 1400 mm, centre height 650 mm → 102.1538 %.
 */
export const neutralAntiSquat: Reading = {
  key: 'neutralAntiSquat',
  label: 'Neutral anti-squat',
  group: 'drive',
  quantity: 'percent',
  construction: 'squatLine',
  read: (stance) => {
    const without = withoutCentre(stance);
    if (without !== null) return without;
    const found = neutralOf(stance);
    return found.ok ? found.neutral : absent('centreOnGround');
  },
  more: 'neutral point higher',
  less: 'neutral point lower',
  help: {
    what: 'The anti-squat at which this bike’s rear neither squats nor lifts, the weight of wheel and swingarm counted.',
    sign: '100 % with a weightless wheel; a few points more with a real one on a swingarm that falls to the axle.',
    measured: 'Computed from the weights of the rear wheel and of the whole bike.',
    feels: 'Hold the bike’s anti-squat against it: below it the rear squats on the gas, above it lifts.',
  },
};
