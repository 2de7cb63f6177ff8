/** Fork travel used, in the ride state with travel set by hand. */
import { ANY_LENGTH } from '../../parts/bounds.ts';
import type { NumberDefinition } from '../definition/adjuster.ts';

export const frontTravelUsed = {
  key: 'frontTravelUsed',
  kind: 'riding',
  group: 'travel',
  label: 'Fork travel used',
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
