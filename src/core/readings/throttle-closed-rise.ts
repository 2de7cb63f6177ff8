/** What a closed throttle does to the rear: its rise against coasting. */
import { closedThrottleRise, throttleIsClosed } from '../riding/throttle-closed.ts';
import { absent } from './absent.ts';
import type { Reading } from './reading.ts';

/**
 * Rise of the rear wheel's end of the bike with the throttle closed against coasting, mm of rear travel: neither driven
 * nor slowed, without drag, with the same load and lean. Positive rises, negative drops. From the two balances, so that
 * unsprung mass and the diving front count; the spin of wheels and engine does not. No answer where the throttle is open.
 * Example: mass 200 kg, pivot height 380 mm, pivot ahead 550 mm, rear teeth 45, lower run below the pivot 60 mm, fork
 * spring rate 8 N/mm, shock spring rate 90 N/mm, shock preload 5 mm, engine braking 0.2 g → 0.645 mm.
 */
export const throttleClosedRise: Reading = {
  key: 'throttleClosedRise',
  label: 'Rear rise, throttle closed',
  group: 'drive',
  quantity: 'length',
  construction: 'engineBrakingLine',
  read: (stance) =>
    closedThrottleRise(stance) ?? absent(throttleIsClosed(stance) ? 'notCarried' : 'throttleOpen'),
  more: 'rear rises more off the gas',
  less: 'rear rises less off the gas',
  belowZero: { more: 'rear drops less off the gas', less: 'rear drops more off the gas' },
  acrossZero: { more: 'rear now rises off the gas', less: 'rear now drops off the gas' },
  help: {
    what: 'How far the rear comes up as the throttle closes, against coasting with the same load and lean.',
    sign: 'Positive rises, negative drops. Near zero the engine-braking line may say otherwise: it leaves out the unsprung weight and the diving front, which count here.',
    measured: 'Computed from the balance; the spin of wheels and engine is left out.',
    feels: 'A rear that rises loads the front as you shut the throttle; one that drops feels held down.',
  },
};
