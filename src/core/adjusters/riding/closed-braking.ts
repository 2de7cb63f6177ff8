/** What the brakes add to the engine’s own braking in the ride state “Throttle closed”. */
import { ANY_ACCELERATION } from '../../parts/bounds.ts';
import type { NumberDefinition } from '../definition/adjuster.ts';

export const closedBraking = {
  key: 'closedBraking',
  kind: 'riding',
  group: 'riding',
  label: 'Braking, throttle closed',
  holds: 'number',
  quantity: 'acceleration',
  saved: ANY_ACCELERATION,
  default: 0,
  range: { least: 0, most: 1.5, step: 0.05 },
  reading: 'frontTravel',
  more: 'harder',
  less: 'gentler',
  help: 'What the brakes add to the engine’s own braking in the ride state “Throttle closed”. The front brake’s share applies to the brakes alone.',
} as const satisfies NumberDefinition;
