/** Fork air gap: how far the oil stands below the top of the tube. */
import { ANY_LENGTH } from '../../parts/bounds.ts';
import { onForkAir } from '../definition/fitting.ts';
import type { NumberDefinition } from '../definition/adjuster.ts';

export const forkAirGap = {
  key: 'forkAirGap',
  kind: 'part',
  group: 'springs',
  label: 'Fork air gap',
  holds: 'number',
  part: 'the fork’s air gap',
  quantity: 'length',
  saved: ANY_LENGTH,
  default: 130,
  range: { least: 50, most: 250, step: 5 },
  applies: onForkAir,
  moves: { end: 'front', more: 'down' },
  more: 'more',
  less: 'less',
  help: 'Oil level below the top of the tube, with the fork fully compressed and the spring out. Less stiffens the last part of the travel. Keep within the maker’s least and most.',
} as const satisfies NumberDefinition;
