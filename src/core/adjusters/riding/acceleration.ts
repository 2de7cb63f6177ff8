/** Acceleration in the ride state “Accelerating”, from none to where the front wheel lifts. */
import { ANY_ACCELERATION } from '../../parts/bounds.ts';
import type { NumberDefinition } from '../definition/adjuster.ts';

export const acceleration = {
  key: 'acceleration',
  formerly: 'gas',
  kind: 'riding',
  group: 'riding',
  label: 'Acceleration',
  holds: 'number',
  quantity: 'acceleration',
  saved: ANY_ACCELERATION,
  belowLeast:
    'Slower is engine braking (engineDeceleration, ride state “Throttle closed”) or braking (ride state “Braking”).',
  default: 0.5,
  range: { least: 0, most: 1.5, step: 0.05 },
  reading: 'rearTravel',
  more: 'harder',
  less: 'gentler',
  help: 'Acceleration in the ride state “Accelerating”, from none to where the front wheel lifts.',
} as const satisfies NumberDefinition;
