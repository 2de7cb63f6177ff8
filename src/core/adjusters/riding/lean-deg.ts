/** Lean angle in the ride state “Mid-corner”, from upright. */
import { ANY_ANGLE } from '../../parts/bounds.ts';
import type { NumberDefinition } from '../definition/adjuster.ts';

export const leanDeg = {
  key: 'leanDeg',
  kind: 'riding',
  group: 'riding',
  label: 'Lean angle',
  holds: 'number',
  quantity: 'angle',
  saved: ANY_ANGLE,
  default: 40,
  range: { least: 0, most: 65, step: 1 },
  reading: 'rearTravel',
  more: 'leaned further',
  less: 'more upright',
  help: 'Lean from upright in the ride state “Mid-corner”. More lean loads the springs more: at 45° by two fifths.',
} as const satisfies NumberDefinition;
