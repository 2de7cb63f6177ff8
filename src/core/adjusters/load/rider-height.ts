/** Height of the rider’s centre of gravity above the seat mark, square to the ground. */
import { ANY_PLACE } from '../../parts/bounds.ts';
import type { NumberDefinition } from '../definition/adjuster.ts';

export const riderHeight = {
  key: 'riderHeight',
  kind: 'load',
  group: 'load',
  label: 'Rider’s centre of gravity above seat',
  holds: 'number',
  quantity: 'length',
  saved: ANY_PLACE,
  default: 250,
  range: { least: 0, most: 600, step: 10 },
  reading: 'centreHeight',
  needs: 'riderMass',
  more: 'higher',
  less: 'lower',
  help: 'Rider’s centre of gravity above the seat mark: about the navel, lower when tucked in.',
} as const satisfies NumberDefinition;
