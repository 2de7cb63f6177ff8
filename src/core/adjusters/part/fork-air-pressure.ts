/** Fork air pressure: what a gauge shows with the fork topped out. */
import { ANY_PRESSURE } from '../../parts/bounds.ts';
import { onForkAir } from '../definition/fitting.ts';
import type { NumberDefinition } from '../definition/adjuster.ts';

export const forkAirPressure = {
  key: 'forkAirPressure',
  kind: 'part',
  group: 'springs',
  label: 'Fork air pressure',
  holds: 'number',
  part: 'the fork’s air pressure',
  quantity: 'pressure',
  saved: ANY_PRESSURE,
  default: 0,
  range: { least: 0, most: 15, step: 0.1 },
  minutes: 5,
  applies: onForkAir,
  moves: { end: 'front', more: 'up' },
  more: 'more',
  less: 'less',
  help: 'What a gauge shows with the fork topped out and cold: 0 for a fork that is not pumped up. More raises the front and stiffens it. Keep below the maker’s most.',
} as const satisfies NumberDefinition;
