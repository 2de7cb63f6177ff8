/** Part of the braking that the front wheel does. */
import { ANY_PERCENTAGE } from '../../parts/bounds.ts';
import type { NumberDefinition } from '../definition/adjuster.ts';

export const brakeFrontShare = {
  key: 'brakeFrontShare',
  kind: 'riding',
  group: 'riding',
  label: 'Front brake’s share',
  holds: 'number',
  quantity: 'percent',
  saved: ANY_PERCENTAGE,
  default: 100,
  range: { least: 0, most: 100, step: 5 },
  reading: 'frontTravel',
  more: 'more at the front',
  less: 'more at the rear',
  help: 'Part of the braking that the front wheel does; the rear wheel does the rest.',
} as const satisfies NumberDefinition;
