/** Rider weight. */
import { ANY_MASS } from '../../parts/bounds.ts';
import type { NumberDefinition } from '../definition/adjuster.ts';

export const riderMass = {
  key: 'riderMass',
  kind: 'load',
  group: 'load',
  label: 'Rider weight',
  holds: 'number',
  part: 'the rider’s weight',
  quantity: 'mass',
  saved: ANY_MASS,
  default: 0,
  range: { least: 0, most: 200, step: 1 },
  reading: 'seatHeight',
  more: 'heavier',
  less: 'lighter',
  help: 'Rider in riding gear.',
} as const satisfies NumberDefinition;
