/** Deceleration by the brakes in the ride state “Mid-corner”. */
import { ANY_ACCELERATION } from '../../parts/bounds.ts';
import type { NumberDefinition } from '../definition/adjuster.ts';

export const cornerBraking = {
  key: 'cornerBraking',
  kind: 'riding',
  group: 'riding',
  label: 'Braking in mid-corner',
  holds: 'number',
  quantity: 'acceleration',
  saved: ANY_ACCELERATION,
  default: 0,
  range: { least: 0, most: 0.8, step: 0.05 },
  reading: 'frontTravel',
  more: 'harder',
  less: 'gentler',
  help: 'Deceleration by the brakes in the ride state “Mid-corner”. The front brake’s share applies.',
} as const satisfies NumberDefinition;
