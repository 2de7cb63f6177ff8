/** Drag of the air against the direction of travel. */
import { ANY_FORCE } from '../../parts/bounds.ts';
import type { NumberDefinition } from '../definition/adjuster.ts';

export const dragForce = {
  key: 'dragForce',
  kind: 'riding',
  group: 'riding',
  label: 'Drag',
  holds: 'number',
  quantity: 'force',
  saved: ANY_FORCE,
  default: 0,
  range: { least: 0, most: 1000, step: 10 },
  reading: 'frontTravel',
  more: 'more drag',
  less: 'less drag',
  help: 'Drag of the air against the direction of travel, in every moving ride state. Zero at walking pace.',
} as const satisfies NumberDefinition;
