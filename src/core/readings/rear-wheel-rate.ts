/** Rear wheel rate: how stiff the shock is at the wheel. */
import { rearWheelRate as rateAtWheel } from '../springs/at-the-wheel.ts';
import { withoutSprings } from './springs-known.ts';
import type { Reading } from './reading.ts';
import { absent } from './absent.ts';

/**
 * Rate of all shocks' springs at the rear wheel, N/mm: force at the axle per its rise, both square to the ground with
 * the frame held. Spring rate × motion ratio², and the spring's force × change of the motion ratio. No answer without
 * springs, beyond closed coils, or where the links have none.
 * Example: shock spring rate 100 N/mm, stroke per travel 0.5 → 25 N/mm.
 */
export const rearWheelRate: Reading = {
  key: 'rearWheelRate',
  label: 'Rear wheel rate',
  group: 'suspension',
  quantity: 'rate',
  construction: 'rearTravel',
  read: (stance) => {
    const { sprung } = stance;
    if (sprung === undefined) return absent('noSprings');
    const beyond = withoutSprings(sprung, stance.travel.rear, 'rear');
    if (beyond !== null) return beyond;
    const rate = rateAtWheel(sprung, stance.travel.rear, stance.pose.pitch);
    return typeof rate === 'number' ? rate : absent('linksSilent');
  },
  more: 'rear stiffer',
  less: 'rear softer',
  belowZero: { more: 'rear gives way less', less: 'rear gives way more' },
  help: {
    what: 'How much more load the rear carries for each mm it sinks, of the springs alone.',
    sign: 'Mostly positive; below zero the rear gives way, which falling leverage can bring about.',
    measured: 'Computed from the shock’s spring and the links; on the bike, the sag that a known load adds.',
    feels: 'Stiffer squats less and rides harsher; softer grips better and bottoms sooner.',
  },
};
