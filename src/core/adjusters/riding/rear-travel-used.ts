/** Rear travel set by hand, which the ride state of that name stands at; what other states use is a reading. */
import { ANY_LENGTH } from '../../parts/bounds.ts';
import type { NumberDefinition } from '../definition/adjuster.ts';

export const rearTravelUsed = {
  key: 'rearTravelUsed',
  kind: 'riding',
  group: 'travel',
  label: 'Rear travel set by hand',
  holds: 'number',
  quantity: 'length',
  saved: ANY_LENGTH,
  default: 0,
  range: { least: 0, most: 'rearTravel', step: 1 },
  moves: { end: 'rear', more: 'down' },
  more: 'deeper',
  less: 'higher',
  help: 'Rise of the rear axle from hanging, square to the ground with the frame held, in the ride state “Travel set by hand”.',
} as const satisfies NumberDefinition;
