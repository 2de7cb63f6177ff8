/** Load weight. */
import { ANY_MASS } from '../../parts/bounds.ts';
import type { NumberDefinition } from '../definition/adjuster.ts';

export const loadMass = {
  key: 'loadMass',
  kind: 'load',
  group: 'load',
  label: 'Load weight',
  holds: 'number',
  part: 'the load',
  quantity: 'mass',
  saved: ANY_MASS,
  default: 0,
  range: { least: 0, most: 200, step: 1 },
  reading: 'seatHeight',
  more: 'heavier',
  less: 'lighter',
  help: 'Luggage.',
} as const satisfies NumberDefinition;
