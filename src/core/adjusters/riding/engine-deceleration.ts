/** What the engine alone slows the bike by in the ride state “Throttle closed”. */
import { ANY_ACCELERATION } from '../../parts/bounds.ts';
import type { NumberDefinition } from '../definition/adjuster.ts';

export const engineDeceleration = {
  key: 'engineDeceleration',
  kind: 'riding',
  group: 'riding',
  label: 'Engine braking',
  holds: 'number',
  quantity: 'acceleration',
  saved: ANY_ACCELERATION,
  belowLeast: 'To gain speed set acceleration (ride state “Accelerating”).',
  default: 0.1,
  range: { least: 0, most: 0.5, step: 0.01 },
  reading: 'rearTravel',
  more: 'harder',
  less: 'gentler',
  help: 'What the engine alone slows the bike by in the ride state “Throttle closed”. Drag of the air slows it on top; spin of wheels and engine is left out.',
} as const satisfies NumberDefinition;
