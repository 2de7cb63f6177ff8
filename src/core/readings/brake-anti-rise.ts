/** Rear brake anti-rise: how much of its load transfer the rear brake itself holds down. */
import { rearBrakeSlope } from '../standing/rear-brake.ts';
import { antiRise } from './engine-braking.ts';
import type { Reading } from './reading.ts';
import { absent } from './absent.ts';

/**
 * Anti-rise of the rear brake alone, per cent: 100·slope of the brake line / slope of the load-transfer line. Caliper
 * on the swingarm: the line runs through the pivot. On a stay: through the crossing of arm line and stay. 0 lets the
 * rear rise by all of the load transfer, 100 keeps it where it is. Moments of arm, wheel and bracket (rear-brake.ts).
 * No answer without a centre of gravity above the ground, or where the stay cannot hold.
 * Example: pivot height 342 mm, pivot ahead 570 mm, load-transfer slope 0.4 → 150 %.
 */
export const brakeAntiRise: Reading = {
  key: 'brakeAntiRise',
  label: 'Rear brake, anti-rise',
  group: 'drive',
  quantity: 'percent',
  construction: 'brakeLine',
  read: (stance) => {
    const { machine, arm, pose } = stance;
    const slope = rearBrakeSlope(machine.brake, machine, arm.angle, pose.pivot);
    if (typeof slope === 'number') return antiRise(stance, slope);
    return absent(slope.reason === 'stayThroughAxle' ? 'stayThroughAxle' : 'stayCannotClose');
  },
  more: 'rear held down more on the rear brake',
  less: 'rear held down less on the rear brake',
  belowZero: { more: 'rear lifted less on the rear brake', less: 'rear lifted more on the rear brake' },
  help: {
    what: 'How much of the rear brake’s load transfer the brake’s own pull on the swingarm holds down, without the spring.',
    sign: '100 % keeps the rear where it is; more pulls it down, less lets it rise.',
    measured: 'Computed from pivot, tyre and what holds the caliper.',
    feels: 'More keeps the rear low on the rear brake; too much makes the wheel hop on rough ground.',
  },
};
