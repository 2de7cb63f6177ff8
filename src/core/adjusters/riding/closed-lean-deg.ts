/** Lean from upright in the ride state “Throttle closed”. */
import { ANY_ANGLE } from '../../parts/bounds.ts';
import type { NumberDefinition } from '../definition/adjuster.ts';

export const closedLeanDeg = {
  key: 'closedLeanDeg',
  kind: 'riding',
  group: 'riding',
  label: 'Lean angle, throttle closed',
  holds: 'number',
  quantity: 'angle',
  saved: ANY_ANGLE,
  default: 0,
  range: { least: 0, most: 60, step: 1 },
  reading: 'rearTravel',
  more: 'leaned further',
  less: 'more upright',
  help: 'Lean from upright in the ride state “Throttle closed”.',
} as const satisfies NumberDefinition;
