/** Fork travel set by hand, which the ride state of that name stands at; what other states use is a reading. */
import { ANY_LENGTH } from '../../parts/bounds.ts';
import type { NumberDefinition } from '../definition/adjuster.ts';

export const frontTravelUsed = {
  key: 'frontTravelUsed',
  kind: 'riding',
  group: 'travel',
  label: 'Fork travel set by hand',
  holds: 'number',
  quantity: 'length',
  saved: ANY_LENGTH,
  default: 0,
  range: { least: 0, most: 'forkTravel', step: 1 },
  moves: { end: 'front', more: 'down' },
  more: 'deeper',
  less: 'higher',
  help: 'How far the fork has gone in along the legs, from topped out, in the ride state “Travel set by hand”.',
} as const satisfies NumberDefinition;
