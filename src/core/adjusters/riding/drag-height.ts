/** Height at which the drag acts. */
import { ANY_LENGTH } from '../../parts/bounds.ts';
import type { NumberDefinition } from '../definition/adjuster.ts';

export const dragHeight = {
  key: 'dragHeight',
  kind: 'riding',
  group: 'riding',
  label: 'Drag height',
  holds: 'number',
  quantity: 'length',
  saved: ANY_LENGTH,
  default: 600,
  range: { least: 300, most: 1200, step: 10 },
  reading: 'frontTravel',
  needs: 'dragForce',
  more: 'higher',
  less: 'lower',
  help: 'Where the drag acts, above the ground with the bike upright: about the rider’s chest.',
} as const satisfies NumberDefinition;
