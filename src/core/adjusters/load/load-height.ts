/** Height of the load’s centre of gravity above the load mark, square to the ground. */
import { ANY_PLACE } from '../../parts/bounds.ts';
import type { NumberDefinition } from '../definition/adjuster.ts';

export const loadHeight = {
  key: 'loadHeight',
  kind: 'load',
  group: 'load',
  label: 'Load’s centre of gravity above load mark',
  holds: 'number',
  quantity: 'length',
  saved: ANY_PLACE,
  default: 150,
  range: { least: 0, most: 600, step: 10 },
  reading: 'centreHeight',
  needs: 'loadMass',
  more: 'higher',
  less: 'lower',
  help: 'Load’s centre of gravity above the load mark.',
} as const satisfies NumberDefinition;
