/** Acceleration in the ride state “Mid-corner”. */
import { ANY_ACCELERATION } from '../../parts/bounds.ts';
import type { NumberDefinition } from '../definition/adjuster.ts';

export const cornerAcceleration = {
  key: 'cornerAcceleration',
  formerly: 'cornerGas',
  kind: 'riding',
  group: 'riding',
  label: 'Acceleration in mid-corner',
  holds: 'number',
  quantity: 'acceleration',
  saved: ANY_ACCELERATION,
  belowLeast:
    'To slow in the ride state “Mid-corner” set cornerBraking, or cornerEngineDeceleration for a closed throttle.',
  default: 0,
  range: { least: 0, most: 0.8, step: 0.05 },
  reading: 'rearTravel',
  more: 'harder',
  less: 'gentler',
  help: 'Acceleration in the ride state “Mid-corner”. Takes the throttle open and both brakes off.',
} as const satisfies NumberDefinition;
