/** Deceleration in the ride state “Braking”, from none to where the rear wheel lifts. */
import { ANY_ACCELERATION } from '../../parts/bounds.ts';
import type { NumberDefinition } from '../definition/adjuster.ts';

export const braking = {
  key: 'braking',
  formerly: 'brake',
  kind: 'riding',
  group: 'riding',
  label: 'Braking',
  holds: 'number',
  quantity: 'acceleration',
  saved: ANY_ACCELERATION,
  belowLeast: 'To gain speed set acceleration (ride state “Accelerating”).',
  default: 0.6,
  range: { least: 0, most: 1.5, step: 0.05 },
  reading: 'frontTravel',
  more: 'harder',
  less: 'gentler',
  help: 'Deceleration in the ride state “Braking”, from none to where the rear wheel lifts.',
} as const satisfies NumberDefinition;
